// Time and speed as the loop meets them.
import { formula } from '../formula';

/** Time between two samples, s. */
export const samplePeriod = formula({
  key: 'loop.samplePeriod',
  symbol: 't_s',
  name: 'Time between samples',
  unit: 's',
  given: { f: '1/s' },
  text: '1 / f',
  source: 'Definition',
  of: (g) => 1 / g.f,
});

/** Speed of the output for a motor speed, rad/s. */
export const outputSpeed = formula({
  key: 'loop.outputSpeed',
  symbol: 'omega_out',
  name: 'Output speed for a motor speed',
  unit: 'rad/s',
  given: { omega_m: 'rad/s', N: '1' },
  text: 'omega_m / N',
  source: 'Definition of the ratio',
  of: (g) => g.omega_m / g.N,
});

// The standard second-order loop: overshoot, times and margins of a damping ratio zeta and a natural frequency.
import { formula } from '../formula';

const nise = 'Nise, Control Systems Engineering, ch. 4, from memory';
const below1 = { zeta: [0.05, 0.95] } as const;

/** Overshoot of a step over its size. */
export const overshoot = formula({
  key: 'loop.overshoot',
  symbol: 'OS',
  name: 'Overshoot',
  unit: '1',
  given: { zeta: '1' },
  text: 'exp(-pi * zeta / sqrt(1 - zeta^2))',
  source: nise,
  validity: 'zeta below 1.',
  domain: below1,
  of: (g) => Math.exp((-Math.PI * g.zeta) / Math.sqrt(1 - g.zeta ** 2)),
});

/** Damping ratio of an overshoot. */
export const dampingOfOvershoot = formula({
  key: 'loop.dampingOfOvershoot',
  symbol: 'zeta',
  name: 'Damping ratio of an overshoot',
  unit: '1',
  given: { OS: '1' },
  text: '-log(OS) / sqrt(pi^2 + log(OS)^2)',
  source: nise,
  validity: 'Overshoot between 0 and 1.',
  domain: { OS: [0.01, 0.95] },
  of: (g) => -Math.log(g.OS) / Math.sqrt(Math.PI ** 2 + Math.log(g.OS) ** 2),
});

/** Time of the first peak of a step, s. */
export const peakTime = formula({
  key: 'loop.peakTime',
  symbol: 't_pk',
  name: 'Time of the first peak',
  unit: 's',
  given: { omega_n: 'rad/s', zeta: '1' },
  text: 'pi / (omega_n * sqrt(1 - zeta^2))',
  source: nise,
  domain: below1,
  of: (g) => Math.PI / (g.omega_n * Math.sqrt(1 - g.zeta ** 2)),
});

/** Natural frequency of a time of first peak, rad/s. */
export const frequencyOfPeakTime = formula({
  key: 'loop.frequencyOfPeakTime',
  symbol: 'omega_n',
  name: 'Natural frequency of a peak time',
  unit: 'rad/s',
  given: { t_pk: 's', zeta: '1' },
  text: 'pi / (t_pk * sqrt(1 - zeta^2))',
  source: nise,
  domain: below1,
  of: (g) => Math.PI / (g.t_pk * Math.sqrt(1 - g.zeta ** 2)),
});

/** Time to stay within 2 %, s, by the envelope. */
export const settlingTime = formula({
  key: 'loop.settlingTime',
  symbol: 't_set',
  name: 'Settling time, 2 %',
  unit: 's',
  given: { zeta: '1', omega_n: 'rad/s' },
  text: '4 / (zeta * omega_n)',
  source: nise,
  domain: below1,
  of: (g) => 4 / (g.zeta * g.omega_n),
});

/** Phase margin of the loop omega_n²/(s (s + 2 zeta omega_n)), rad. */
export const phaseMarginOfDamping = formula({
  key: 'loop.phaseMarginOfDamping',
  symbol: 'phi_m',
  name: 'Phase margin of a damping ratio',
  unit: 'rad',
  given: { zeta: '1' },
  text: 'atan(2 * zeta / sqrt(sqrt(1 + 4 * zeta^4) - 2 * zeta^2))',
  source: 'Franklin; Dorf, from memory',
  domain: below1,
  of: (g) => Math.atan((2 * g.zeta) / Math.sqrt(Math.sqrt(1 + 4 * g.zeta ** 4) - 2 * g.zeta ** 2)),
});

/**
 * Time of a unit step from 10 % to 90 %, s, for zeta in (0, 1) and omega_n in rad/s: found on the exact response by
 * halving. Source: the response in Nise ch. 4.
 */
export function riseTime(zeta: number, omega_n: number): number {
  const root = Math.sqrt(1 - zeta ** 2);
  const response = (x: number) =>
    1 - Math.exp(-zeta * x) * (Math.cos(root * x) + (zeta / root) * Math.sin(root * x));
  const when = (level: number) => {
    let low = 0;
    let high = Math.PI / root;
    for (let i = 0; i < 60; i += 1) {
      const middle = (low + high) / 2;
      if (response(middle) < level) low = middle;
      else high = middle;
    }
    return high;
  };
  return (when(0.9) - when(0.1)) / omega_n;
}

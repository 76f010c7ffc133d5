// A plain bush that runs dry or greased: pressure, sliding speed, their product, and how fast it wears.
import { formula } from '../formula';

/** Mean pressure in a bush, Pa; b its length. */
export const bushPressure = formula({
  key: 'bearings.bushPressure',
  symbol: 'p_b',
  name: 'Pressure in a bush',
  unit: 'Pa',
  given: { F_r: 'N', d: 'm', b: 'm' },
  text: 'F_r / (d * b)',
  source: 'Force over the projected area; Shigley ch. 12 (from memory)',
  of: (g) => g.F_r / (g.d * g.b),
});

/** Sliding speed in a bush, m/s. */
export const bushSpeed = formula({
  key: 'bearings.bushSpeed',
  symbol: 'v_b',
  name: 'Sliding speed in a bush',
  unit: 'm/s',
  given: { omega: 'rad/s', d: 'm' },
  text: 'omega * d / 2',
  source: 'Kinematics',
  of: (g) => (g.omega * g.d) / 2,
});

/** Pressure times sliding speed, Pa m/s: what heats and wears a bush. */
export const pressureSpeed = formula({
  key: 'bearings.pressureSpeed',
  symbol: 'pv',
  name: 'Pressure times speed of a bush',
  unit: 'Pa m/s',
  given: { p_b: 'Pa', v_b: 'm/s' },
  text: 'p_b * v_b',
  source: 'Definition; Shigley ch. 12 (from memory)',
  of: (g) => g.p_b * g.v_b,
});

/** Mean sliding speed over a while with rests, m/s; ED share of the time in motion. */
export const meanBushSpeed = formula({
  key: 'bearings.meanBushSpeed',
  symbol: 'v_m',
  name: 'Mean sliding speed, rests included',
  unit: 'm/s',
  given: { omega_m: 'rad/s', d: 'm', ED: '1' },
  text: 'omega_m * d / 2 * ED',
  source: 'Kinematics; what heats and wears a bush is the mean over its rests (common practice, no source)',
  domain: { ED: [0, 1] },
  of: (g) => ((g.omega_m * g.d) / 2) * g.ED,
});

/** Radial load that a limit of pressure times speed leaves a bush, N: the other way of `pressureSpeed`. */
export const bushLoad = formula({
  key: 'bearings.bushLoad',
  symbol: 'F_pv',
  name: 'Load that pressure times speed allows',
  unit: 'N',
  given: { pv: 'Pa m/s', d: 'm', b: 'm', v_b: 'm/s' },
  text: 'pv * d * b / v_b',
  source: 'Inverse of pressure times speed',
  of: (g) => (g.pv * g.d * g.b) / g.v_b,
});

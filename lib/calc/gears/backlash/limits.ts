// Least and largest play of one mesh over its tolerances, and the play of a planetary set at the member that gives its output.
import { formula } from '../../formula';

const DIN = 'DIN 3967:1978, tooth thickness allowances and backlash (from memory)';
const SET = 'Kinematics of a planet between sun and ring, both held or one of them';

/** Centre distance (m) at one end of its tolerance: s_a is −1 for the nearest and 1 for the farthest axes. */
export const centreAtLimit = formula({
  key: 'gears.centreAtLimit',
  symbol: 'a_lim',
  name: 'Centre distance at the end of its tolerance',
  unit: 'm',
  given: { a: 'm', s_a: '1', A_a: 'm' },
  text: 'a + s_a * A_a',
  source: 'Definition',
  domain: { s_a: [-1, 1] },
  of: (g) => g.a + g.s_a * g.A_a,
});

/**
 * Backlash (m) of a mesh whose teeth are thinned by A_s (m), both gears together; j_a (m) is what the centre distance
 * gives to nominal teeth, s_t −1 or 1 for the end of the tolerance T_s (m), 0 for the nominal.
 */
export const thinnedBacklash = formula({
  key: 'gears.thinnedBacklash',
  symbol: 'j_wt',
  name: 'Backlash with thinned teeth',
  unit: 'm',
  given: { j_a: 'm', A_s: 'm', s_t: '1', T_s: 'm' },
  text: 'j_a + A_s + s_t * T_s',
  source: DIN,
  validity: 'Thinning counted along the working pitch circle; without runout, heat and moisture.',
  domain: { s_t: [-1, 1] },
  of: (g) => g.j_a + g.A_s + g.s_t * g.T_s,
});

/** Angle (rad) that a planet carrier turns with sun and ring held: j_s, j_r (m) the play of its two meshes, a (m) to the planets. */
export const carrierBacklash = formula({
  key: 'gears.carrierBacklash',
  symbol: 'phi_j',
  name: 'Angular backlash of a planet carrier',
  unit: 'rad',
  given: { j_s: 'm', j_r: 'm', a: 'm' },
  text: '(j_s + j_r) / (2 * a)',
  source: SET,
  validity: 'Planets alike, without play in their own bearings.',
  of: (g) => (g.j_s + g.j_r) / (2 * g.a),
});

/** Angle (rad) that the ring turns with sun and carrier held; d_w (m) its pitch circle. */
export const ringBacklash = formula({
  key: 'gears.ringBacklash',
  symbol: 'phi_j',
  name: 'Angular backlash of a ring behind planets',
  unit: 'rad',
  given: { j_s: 'm', j_r: 'm', d_w: 'm' },
  text: '2 * (j_s + j_r) / d_w',
  source: SET,
  of: (g) => (2 * (g.j_s + g.j_r)) / g.d_w,
});

export const backlashLimitFormulas = [centreAtLimit, thinnedBacklash, carrierBacklash, ringBacklash] as const;

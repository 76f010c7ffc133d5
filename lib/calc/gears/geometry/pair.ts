// An external pair: how far apart its shafts must stand, and under which angle its flanks press.
import { formula } from '../../formula';
import { inverseInvolute, involute } from '../../numeric/involute';

const ISO = 'ISO 21771:2007, gear pairs, external (from memory)';
const angle = [0.24, 0.45] as const;
const teeth = [8, 150] as const;
const helix = [0, 0.75] as const;

/** Gear ratio of a stage: teeth of the wheel over teeth of the pinion. */
export const gearRatio = formula({
  key: 'gears.gearRatio',
  symbol: 'u',
  name: 'Gear ratio',
  unit: '1',
  given: { z_1: '1', z_2: '1' },
  text: 'z_2 / z_1',
  source: ISO,
  domain: { z_1: teeth, z_2: teeth },
  of: (g) => g.z_2 / g.z_1,
});

/** Distance of the shafts (m) at which the reference circles touch. */
export const referenceCentreDistance = formula({
  key: 'gears.referenceCentreDistance',
  symbol: 'a_d',
  name: 'Reference centre distance',
  unit: 'm',
  given: { m_n: 'm', z_1: '1', z_2: '1', beta: 'rad' },
  text: 'm_n * (z_1 + z_2) / (2 * cos(beta))',
  source: ISO,
  domain: { z_1: teeth, z_2: teeth, beta: helix },
  of: (g) => (g.m_n * (g.z_1 + g.z_2)) / (2 * Math.cos(g.beta)),
});

/**
 * Working pressure angle (rad) of a pair that meshes without backlash, from its profile shifts. Not a number when the
 * shifts are so negative that no such mesh exists.
 */
export const workingAngleFromShifts = formula({
  key: 'gears.workingAngleFromShifts',
  symbol: 'alpha_wt',
  name: 'Working transverse pressure angle from the profile shifts',
  unit: 'rad',
  given: { alpha_t: 'rad', alpha_n: 'rad', x_1: '1', x_2: '1', z_1: '1', z_2: '1' },
  text: '(tan(alpha_wt) - alpha_wt) - (tan(alpha_t) - alpha_t) - 2 * tan(alpha_n) * (x_1 + x_2) / (z_1 + z_2)',
  source: ISO,
  validity: 'Mesh without backlash; the involute of the working angle must not fall below zero.',
  residual: { unit: '1' },
  domain: {
    alpha_t: [0.34, 0.45],
    alpha_n: [0.24, 0.45],
    x_1: [-0.1, 0.8],
    x_2: [-0.1, 0.8],
    z_1: [17, 150],
    z_2: [17, 150],
  },
  of: (g) =>
    inverseInvolute(involute(g.alpha_t) + (2 * Math.tan(g.alpha_n) * (g.x_1 + g.x_2)) / (g.z_1 + g.z_2)),
});

/** Working pressure angle (rad) of a pair held at centre distance a (m). */
export const workingAngleFromCentreDistance = formula({
  key: 'gears.workingAngleFromCentreDistance',
  symbol: 'alpha_wt',
  name: 'Working transverse pressure angle from the centre distance',
  unit: 'rad',
  given: { a_d: 'm', alpha_t: 'rad', a: 'm' },
  text: 'acos(a_d * cos(alpha_t) / a)',
  source: ISO,
  validity: 'a ≥ a_d cos(alpha_t): closer, the base circles would overlap the line of action.',
  domain: { a_d: [0.9, 1], a: [1, 1.1], alpha_t: angle },
  of: (g) => Math.acos((g.a_d * Math.cos(g.alpha_t)) / g.a),
});

/** Centre distance (m) at which a pair with this working pressure angle (rad) runs. */
export const workingCentreDistance = formula({
  key: 'gears.workingCentreDistance',
  symbol: 'a_w',
  name: 'Centre distance for mesh without backlash',
  unit: 'm',
  given: { a_d: 'm', alpha_t: 'rad', alpha_wt: 'rad' },
  text: 'a_d * cos(alpha_t) / cos(alpha_wt)',
  source: ISO,
  domain: { alpha_t: angle, alpha_wt: angle },
  of: (g) => (g.a_d * Math.cos(g.alpha_t)) / Math.cos(g.alpha_wt),
});

/** Sum of the profile shifts that meshes without backlash at a given working pressure angle (rad). */
export const shiftSumForAngle = formula({
  key: 'gears.shiftSumForAngle',
  symbol: 'sum_x',
  name: 'Sum of profile shifts for a working pressure angle',
  unit: '1',
  given: { z_1: '1', z_2: '1', alpha_wt: 'rad', alpha_t: 'rad', alpha_n: 'rad' },
  text: '(z_1 + z_2) * ((tan(alpha_wt) - alpha_wt) - (tan(alpha_t) - alpha_t)) / (2 * tan(alpha_n))',
  source: ISO,
  domain: { z_1: teeth, z_2: teeth, alpha_wt: [0.36, 0.5], alpha_t: [0.24, 0.34], alpha_n: angle },
  of: (g) => ((g.z_1 + g.z_2) * (involute(g.alpha_wt) - involute(g.alpha_t))) / (2 * Math.tan(g.alpha_n)),
});

/** How much farther apart (m) the case holds the shafts than the teeth need; below zero the teeth bind. */
export const centreDistanceExcess = formula({
  key: 'gears.centreDistanceExcess',
  symbol: 'Delta_a',
  name: 'Centre distance beyond the one without backlash',
  unit: 'm',
  given: { a: 'm', a_w: 'm' },
  text: 'a - a_w',
  source: 'Definition',
  domain: { a: [2, 4], a_w: [0.5, 1.5] },
  of: (g) => g.a - g.a_w,
});

/** Centre distance modification coefficient: (a − a_d) over the normal module. */
export const centreDistanceModification = formula({
  key: 'gears.centreDistanceModification',
  symbol: 'y',
  name: 'Centre distance modification coefficient',
  unit: '1',
  given: { a: 'm', a_d: 'm', m_n: 'm' },
  text: '(a - a_d) / m_n',
  source: ISO,
  domain: { a: [2, 4], a_d: [0.5, 1.5] },
  of: (g) => (g.a - g.a_d) / g.m_n,
});

/**
 * Tip shortening, in modules, that keeps the standard tip clearance at centre distance modification y. Positive shortens
 * the teeth (ISO 21771 counts the same figure with the opposite sign).
 */
export const tipShortening = formula({
  key: 'gears.tipShortening',
  symbol: 'k',
  name: 'Tip shortening coefficient',
  unit: '1',
  given: { x_1: '1', x_2: '1', y: '1' },
  text: 'x_1 + x_2 - y',
  source: ISO,
  domain: { x_1: [0.5, 1], x_2: [0.5, 1], y: [0.1, 0.9] },
  of: (g) => g.x_1 + g.x_2 - g.y,
});

/** Height (m) of a pinion's axis above the foot of its rack, H (m) being that of the rack's reference line. */
export const rackMountingDistance = formula({
  key: 'gears.rackMountingDistance',
  symbol: 'a_R',
  name: 'Mounting distance of a pinion over a rack',
  unit: 'm',
  given: { z: '1', m_n: 'm', beta: 'rad', H: 'm', x: '1' },
  text: 'z * m_n / (2 * cos(beta)) + H + x * m_n',
  source: ISO,
  domain: { z: teeth, beta: helix, x: [0, 1] },
  of: (g) => (g.z * g.m_n) / (2 * Math.cos(g.beta)) + g.H + g.x * g.m_n,
});

export const pairFormulas = [
  gearRatio,
  referenceCentreDistance,
  workingAngleFromShifts,
  workingAngleFromCentreDistance,
  workingCentreDistance,
  shiftSumForAngle,
  centreDistanceExcess,
  centreDistanceModification,
  tipShortening,
  rackMountingDistance,
] as const;

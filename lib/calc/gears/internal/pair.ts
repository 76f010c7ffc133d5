// A pinion inside a ring gear: how far apart their axes stand, and under which angle the flanks press.
// Signs as the gear handbooks print them: all of z_2, d_2, a are positive, and x_2 > 0 cuts the ring's spaces deeper.
// ISO 21771 counts z_2, d_2 and a of an internal pair negative; its x_2 is this one with the sign changed.
import { formula } from '../../formula';
import { inverseInvolute, involute } from '../../numeric/involute';

const SOURCE = 'KHK Gear Technical Reference, internal gears; ISO 21771:2007 (from memory)';
const pinion = [12, 40] as const;
const ring = [60, 150] as const;
const angle = [0.24, 0.45] as const;
const helix = [0, 0.75] as const;

/** Distance of the axes (m) at which the reference circles of pinion and ring touch. */
export const internalReferenceCentreDistance = formula({
  key: 'gears.internalReferenceCentreDistance',
  symbol: 'a_d',
  name: 'Reference centre distance of an internal pair',
  unit: 'm',
  given: { m_n: 'm', z_1: '1', z_2: '1', beta: 'rad' },
  text: 'm_n * (z_2 - z_1) / (2 * cos(beta))',
  source: SOURCE,
  validity: 'z_2 > z_1',
  domain: { z_1: pinion, z_2: ring, beta: helix },
  of: (g) => (g.m_n * (g.z_2 - g.z_1)) / (2 * Math.cos(g.beta)),
});

/**
 * Working pressure angle (rad) of an internal pair that meshes without backlash, from its profile shifts. Not a number
 * when x_1 exceeds x_2 by so much that no such mesh exists.
 */
export const internalWorkingAngleFromShifts = formula({
  key: 'gears.internalWorkingAngleFromShifts',
  symbol: 'alpha_wt',
  name: 'Working transverse pressure angle of an internal pair from the profile shifts',
  unit: 'rad',
  given: { alpha_t: 'rad', alpha_n: 'rad', x_1: '1', x_2: '1', z_1: '1', z_2: '1' },
  text: '(tan(alpha_wt) - alpha_wt) - (tan(alpha_t) - alpha_t) - 2 * tan(alpha_n) * (x_2 - x_1) / (z_2 - z_1)',
  source: SOURCE,
  validity: 'Mesh without backlash, z_2 > z_1; the involute of the working angle must not fall below zero.',
  residual: { unit: '1' },
  domain: {
    alpha_t: [0.34, 0.45],
    alpha_n: angle,
    x_1: [-0.1, 0.1],
    x_2: [0, 0.6],
    z_1: pinion,
    z_2: ring,
  },
  of: (g) =>
    inverseInvolute(involute(g.alpha_t) + (2 * Math.tan(g.alpha_n) * (g.x_2 - g.x_1)) / (g.z_2 - g.z_1)),
});

/** How much deeper the ring must be shifted than the pinion for a given working pressure angle (rad): x_2 − x_1. */
export const internalShiftDifference = formula({
  key: 'gears.internalShiftDifference',
  symbol: 'Delta_x',
  name: 'Difference of profile shifts, ring less pinion, for a working pressure angle',
  unit: '1',
  given: { z_1: '1', z_2: '1', alpha_wt: 'rad', alpha_t: 'rad', alpha_n: 'rad' },
  text: '(z_2 - z_1) * ((tan(alpha_wt) - alpha_wt) - (tan(alpha_t) - alpha_t)) / (2 * tan(alpha_n))',
  source: SOURCE,
  domain: { z_1: pinion, z_2: ring, alpha_wt: [0.36, 0.5], alpha_t: [0.24, 0.34], alpha_n: angle },
  of: (g) => ((g.z_2 - g.z_1) * (involute(g.alpha_wt) - involute(g.alpha_t))) / (2 * Math.tan(g.alpha_n)),
});

/** Diameter (m) of the circle of a gear of z teeth that rolls on its mate's inside an internal pair. */
export const internalPitchDiameter = formula({
  key: 'gears.internalPitchDiameter',
  symbol: 'd_w',
  name: 'Working pitch diameter in an internal pair',
  unit: 'm',
  given: { a: 'm', z: '1', z_1: '1', z_2: '1' },
  text: '2 * a * z / (z_2 - z_1)',
  source: SOURCE,
  validity: 'z is z_1 for the pinion and z_2 for the ring.',
  domain: { z: pinion, z_1: pinion, z_2: ring },
  of: (g) => (2 * g.a * g.z) / (g.z_2 - g.z_1),
});

/** How much closer together (m) the axes stand than the teeth need; below zero the teeth of an internal pair bind. */
export const internalCentreDistanceRoom = formula({
  key: 'gears.internalCentreDistanceRoom',
  symbol: 'Delta_a',
  name: 'Centre distance of an internal pair short of the one without backlash',
  unit: 'm',
  given: { a_w: 'm', a: 'm' },
  text: 'a_w - a',
  source: 'Definition; inside a ring, backlash grows as the axes come closer',
  domain: { a_w: [2, 4], a: [0.5, 1.5] },
  of: (g) => g.a_w - g.a,
});

export const internalPairFormulas = [
  internalReferenceCentreDistance,
  internalWorkingAngleFromShifts,
  internalShiftDifference,
  internalPitchDiameter,
  internalCentreDistanceRoom,
] as const;

// A toothed belt over two pulleys: pitch circles, length, wrap and the teeth that carry. 1 is the smaller pulley.
import { formula } from '../../formula';

const ISO = 'ISO 5296, synchronous belts and pulleys; open belt geometry (from memory)';
const small = [15, 30] as const;
const large = [40, 80] as const;

/** Pitch diameter (m) of a pulley of z teeth for a belt of pitch p_b (m). It lies outside the pulley, in the belt's cords. */
export const pulleyPitchDiameter = formula({
  key: 'gears.pulleyPitchDiameter',
  symbol: 'd',
  name: 'Pitch diameter of a toothed pulley',
  unit: 'm',
  given: { z: '1', p_b: 'm' },
  text: 'z * p_b / pi',
  source: ISO,
  domain: { z: small },
  of: (g) => (g.z * g.p_b) / Math.PI,
});

/** Angle (rad) of the strands against the line of centres. */
export const strandAngle = formula({
  key: 'gears.strandAngle',
  symbol: 'gamma',
  name: 'Angle of the strands against the line of centres',
  unit: 'rad',
  given: { d_2: 'm', d_1: 'm', a: 'm' },
  text: 'asin((d_2 - d_1) / (2 * a))',
  source: ISO,
  validity: 'd_2 − d_1 ≤ 2 a',
  domain: { d_2: [2, 3], d_1: [0.5, 1], a: [2, 6] },
  of: (g) => Math.asin((g.d_2 - g.d_1) / (2 * g.a)),
});

/** Pitch length (m) of the belt; it must be a whole number of pitches. */
export const beltLength = formula({
  key: 'gears.beltLength',
  symbol: 'L_b',
  name: 'Pitch length of the belt',
  unit: 'm',
  given: { a: 'm', gamma: 'rad', d_1: 'm', d_2: 'm' },
  text: '2 * a * cos(gamma) + pi / 2 * (d_1 + d_2) + gamma * (d_2 - d_1)',
  source: ISO,
  validity: 'Open belt over two pulleys.',
  domain: { gamma: [0, 0.5], d_1: [0.5, 1], d_2: [2, 3] },
  of: (g) => 2 * g.a * Math.cos(g.gamma) + (Math.PI / 2) * (g.d_1 + g.d_2) + g.gamma * (g.d_2 - g.d_1),
});

/** Teeth of the belt: a whole number for a belt that can be had. */
export const beltTeeth = formula({
  key: 'gears.beltTeeth',
  symbol: 'z_b',
  name: 'Teeth of the belt',
  unit: '1',
  given: { L_b: 'm', p_b: 'm' },
  text: 'L_b / p_b',
  source: ISO,
  of: (g) => g.L_b / g.p_b,
});

/**
 * Centre distance (m) at which a belt of pitch length L_b (m) fits. Not a number when the belt is too short to go round
 * both pulleys. By Newton's method: the length rises with the distance at twice the cosine of the strand angle.
 */
export const beltCentreDistance = formula({
  key: 'gears.beltCentreDistance',
  symbol: 'a',
  name: 'Centre distance for a given belt',
  unit: 'm',
  given: { d_1: 'm', d_2: 'm', L_b: 'm' },
  text: 'sqrt(4 * a^2 - (d_2 - d_1)^2) + pi / 2 * (d_1 + d_2) + (d_2 - d_1) * asin((d_2 - d_1) / (2 * a)) - L_b',
  source: ISO,
  validity: 'Open belt over two pulleys, long enough that they do not overlap.',
  residual: { unit: 'm' },
  domain: { d_1: [0.5, 1], d_2: [2, 3], L_b: [12, 20] },
  of: (g) => {
    const step = g.d_2 - g.d_1;
    const straight = g.L_b - (Math.PI / 2) * (g.d_1 + g.d_2);
    // The length is convex in the distance and half the straight part is too far: each step comes down to the root.
    let a = straight / 2;
    for (let i = 0; i < 60; i++) {
      const gamma = Math.asin(step / (2 * a));
      const next = a - (2 * a * Math.cos(gamma) + step * gamma - straight) / (2 * Math.cos(gamma));
      if (!(Math.abs(next - a) > 1e-15 * a)) return next;
      a = next;
    }
    return a;
  },
});

/** Wrap (rad) of the smaller pulley. */
export const smallPulleyWrap = formula({
  key: 'gears.smallPulleyWrap',
  symbol: 'beta_1',
  name: 'Wrap of the smaller pulley',
  unit: 'rad',
  given: { gamma: 'rad' },
  text: 'pi - 2 * gamma',
  source: ISO,
  domain: { gamma: [0, 0.7] },
  of: (g) => Math.PI - 2 * g.gamma,
});

/** Whole teeth of the smaller pulley in mesh. */
export const teethInMesh = formula({
  key: 'gears.teethInMesh',
  symbol: 'z_e',
  name: 'Teeth of the smaller pulley in mesh',
  unit: '1',
  given: { z_1: '1', beta_1: 'rad' },
  text: 'floor(z_1 * beta_1 / (2 * pi))',
  source: ISO,
  domain: { z_1: small, beta_1: [1.6, 3.14] },
  of: (g) => Math.floor((g.z_1 * g.beta_1) / (2 * Math.PI)),
});

/** Factor on the belt's rated force for few teeth in mesh: 1 from six teeth on. */
export const teethInMeshFactor = formula({
  key: 'gears.teethInMeshFactor',
  symbol: 'k_z',
  name: 'Teeth-in-mesh factor',
  unit: '1',
  given: { z_e: '1' },
  text: 'min(1, 1 - 0.2 * (6 - z_e))',
  source: 'ISO 5295:1987, synchronous belts, power rating (from memory)',
  validity: 'At least two teeth in mesh.',
  domain: { z_e: [2, 12] },
  of: (g) => Math.min(1, 1 - 0.2 * (6 - g.z_e)),
});

/** Ratio of a belt stage: teeth of the driven pulley over those of the driver. */
export const beltRatio = formula({
  key: 'gears.beltRatio',
  symbol: 'i',
  name: 'Ratio of a toothed-belt stage',
  unit: '1',
  given: { z_2: '1', z_1: '1' },
  text: 'z_2 / z_1',
  source: ISO,
  domain: { z_2: large, z_1: small },
  of: (g) => g.z_2 / g.z_1,
});

export const beltGeometryFormulas = [
  pulleyPitchDiameter,
  strandAngle,
  beltLength,
  beltTeeth,
  beltCentreDistance,
  smallPulleyWrap,
  teethInMesh,
  teethInMeshFactor,
  beltRatio,
] as const;

// What a toothed belt may pass on: its teeth, its cords, and the teeth of its pulleys; its tension at rest and its stiffness.
import { formula } from '../../formula';

const ISO = 'ISO 5295:1987, synchronous belts, power rating (from memory)';
const HANDBOOK = 'Roloff, Matek, Maschinenelemente, belt drives; VDI 2758:1993 (from memory)';

/** Factor on the force of a belt of reference width b_0 (m) for width b (m); the outermost cords are cut and carry nothing. */
export const beltWidthFactor = formula({
  key: 'gears.beltWidthFactor',
  symbol: 'k_w',
  name: 'Width factor of the belt',
  unit: '1',
  given: { b: 'm', b_0: 'm', n_w: '1' },
  text: '(b / b_0)^n_w',
  source: ISO,
  validity: 'n_w is 1.14 for neoprene belts after ISO 5295, 1 where a table is given for every width.',
  domain: { n_w: [1, 1.2] },
  of: (g) => (g.b / g.b_0) ** g.n_w,
});

/** Force (N) that the belt's teeth may pass on; F_6 (N) is that of six teeth in mesh at the reference width. */
export const beltTeethCapacity = formula({
  key: 'gears.beltTeethCapacity',
  symbol: 'F_zul',
  name: 'Effective tension that the teeth may pass on',
  unit: 'N',
  given: { F_6: 'N', k_w: '1', k_z: '1' },
  text: 'F_6 * k_w * k_z',
  source: ISO,
  validity: 'At least two teeth in mesh; more than six do not count.',
  of: (g) => g.F_6 * g.k_w * g.k_z,
});

/** Tension (N) that the cords may carry; F_0 (N) is that at the reference width. */
export const beltCordCapacity = formula({
  key: 'gears.beltCordCapacity',
  symbol: 'F_czul',
  name: 'Tension that the cords may carry',
  unit: 'N',
  given: { F_0: 'N', k_w: '1' },
  text: 'F_0 * k_w',
  source: ISO,
  validity: 'Endless belt; a joined one carries about half.',
  of: (g) => g.F_0 * g.k_w,
});

/** Effective tension (N) with the application factor for shocks. */
export const beltPeakTension = formula({
  key: 'gears.beltPeakTension',
  symbol: 'F_uK',
  name: 'Effective tension at the peak, shocks included',
  unit: 'N',
  given: { F_u: 'N', K_A: '1' },
  text: 'F_u * K_A',
  source: HANDBOOK,
  domain: { K_A: [1, 2.5] },
  of: (g) => g.F_u * g.K_A,
});

/** Tension (N) in the cords of the pulling strand, that of turning included. */
export const beltCordTension = formula({
  key: 'gears.beltCordTension',
  symbol: 'F_c',
  name: 'Tension in the cords of the pulling strand',
  unit: 'N',
  given: { F_1: 'N', F_f: 'N' },
  text: 'F_1 + F_f',
  source: HANDBOOK,
  of: (g) => g.F_1 + g.F_f,
});

/** Tension (N) to set in each strand at rest so that the slack one keeps the share s_2 of the effective tension F_u (N). */
export const leastBeltTension = formula({
  key: 'gears.leastBeltTension',
  symbol: 'F_vmin',
  name: 'Least tension at rest',
  unit: 'N',
  given: { F_u: 'N', s_2: '1' },
  text: 'F_u * (1 / 2 + s_2)',
  source: `${HANDBOOK}; solved from the tension of the slack strand`,
  validity: 'Fixed axes, both strands equally long and stiff.',
  domain: { s_2: [0, 0.5] },
  of: (g) => g.F_u * (1 / 2 + g.s_2),
});

/** Force over strain (N) of a belt that stretches by eps_c under its allowable cord tension F_czul (N). */
export const beltSpecificStiffness = formula({
  key: 'gears.beltSpecificStiffness',
  symbol: 'c_sp',
  name: 'Specific stiffness of the belt',
  unit: 'N',
  given: { F_czul: 'N', eps_c: '1' },
  text: 'F_czul / eps_c',
  source: 'Definition; Hooke',
  domain: { eps_c: [0.001, 0.005] },
  of: (g) => g.F_czul / g.eps_c,
});

/** Angle (rad) at the driven pulley by which torque T_2 (N m) winds up a belt stage of stiffness k_belt (N m/rad) there. */
export const beltWindUp = formula({
  key: 'gears.beltWindUp',
  symbol: 'phi_b',
  name: 'Wind-up of the belt at the driven pulley',
  unit: 'rad',
  given: { T_2: 'N m', k_belt: 'N m/rad' },
  text: 'T_2 / k_belt',
  source: HANDBOOK,
  of: (g) => g.T_2 / g.k_belt,
});

/**
 * Shear stress (Pa) in a pulley's teeth when six of them at most carry F_uK (N): p_b (m) is the pitch, c_z the share of it
 * that a tooth keeps, k_z the teeth-in-mesh factor, z_6 the teeth that are counted.
 */
export const pulleyToothShear = formula({
  key: 'gears.pulleyToothShear',
  symbol: 'tau_z',
  name: 'Shear stress in the teeth of the pulley',
  unit: 'Pa',
  given: { F_uK: 'N', z_6: '1', k_z: '1', b: 'm', c_z: '1', p_b: 'm' },
  text: 'F_uK / (z_6 * k_z * b * c_z * p_b)',
  source: 'Mean shear over the tooth’s foot; common practice, no source',
  domain: { z_6: [2, 6], k_z: [0.2, 1], c_z: [0.25, 0.5] },
  of: (g) => g.F_uK / (g.z_6 * g.k_z * g.b * g.c_z * g.p_b),
});

/** Effective tension (N) for which the cords have room beside the tension at rest F_v and that of turning F_f (N). */
export const beltCordRoom = formula({
  key: 'gears.beltCordRoom',
  symbol: 'F_uc',
  name: 'Effective tension that the cords leave room for',
  unit: 'N',
  given: { F_czul: 'N', F_f: 'N', F_v: 'N' },
  text: 'max(2 * (F_czul - F_f - F_v), 0 * F_v)',
  source: `${HANDBOOK}; solved from the tension of the pulling strand`,
  validity: 'Fixed axes, the slack strand still taut.',
  domain: { F_czul: [20, 90], F_f: [0.1, 2], F_v: [1, 10] },
  of: (g) => Math.max(2 * (g.F_czul - g.F_f - g.F_v), 0),
});

/** Shear stress (Pa) that the teeth of a pulley bear at temperature; R_m (Pa) is the tensile strength, c_tau the share of it. */
export const pulleyShearStrength = formula({
  key: 'gears.pulleyShearStrength',
  symbol: 'tau_zul',
  name: 'Shear strength of the teeth of the pulley',
  unit: 'Pa',
  given: { c_tau: '1', R_m: 'Pa', f_T: '1' },
  text: 'c_tau * R_m * f_T',
  source: 'Shear over tension; common practice, no source',
  domain: { c_tau: [0.4, 0.6] },
  of: (g) => g.c_tau * g.R_m * g.f_T,
});

/** Mass of a belt a length (kg/m), from its mass over area (kg/m²) and its width (m). */
export const beltMass = formula({
  key: 'gears.beltMass',
  symbol: 'q_b',
  name: 'Mass of the belt over its length',
  unit: 'kg/m',
  given: { m_b: 'kg/m^2', b: 'm' },
  text: 'm_b * b',
  source: 'Definition',
  of: (g) => g.m_b * g.b,
});

/** Centre distance (m) at which two pulleys just touch. */
export const pulleysTouch = formula({
  key: 'gears.pulleysTouch',
  symbol: 'a_touch',
  name: 'Centre distance at which the pulleys touch',
  unit: 'm',
  given: { d_1: 'm', d_2: 'm' },
  text: '(d_1 + d_2) / 2',
  source: 'Geometry',
  of: (g) => (g.d_1 + g.d_2) / 2,
});

/** Play (m) of the belt's teeth in the grooves of both pulleys; c_j is the clearance in one groove over the pitch p_b (m). */
export const beltPlay = formula({
  key: 'gears.beltPlay',
  symbol: 'j_b',
  name: 'Play of the belt in its pulleys',
  unit: 'm',
  given: { c_j: '1', p_b: 'm' },
  text: '2 * c_j * p_b',
  source: 'Clearance in both pulleys; common practice, no source',
  validity: 'Driving one way and back with the belt taut.',
  domain: { c_j: [0, 0.05] },
  of: (g) => 2 * g.c_j * g.p_b,
});

/** Parts of a pitch by which a belt misses a whole number of teeth; 0 for one that can be had. */
export const beltTeethOff = formula({
  key: 'gears.beltTeethOff',
  symbol: 'Delta_zb',
  name: 'Belt teeth off a whole number',
  unit: '1',
  given: { z_b: '1' },
  text: 'abs(z_b - round(z_b))',
  source: 'Definition',
  domain: { z_b: [40, 200] },
  of: (g) => Math.abs(g.z_b - Math.round(g.z_b)),
});

export const beltStrengthFormulas = [
  beltWidthFactor,
  beltTeethCapacity,
  beltCordCapacity,
  beltPeakTension,
  beltCordTension,
  leastBeltTension,
  beltSpecificStiffness,
  beltWindUp,
  pulleyToothShear,
  beltCordRoom,
  pulleyShearStrength,
  beltMass,
  pulleysTouch,
  beltPlay,
  beltTeethOff,
] as const;

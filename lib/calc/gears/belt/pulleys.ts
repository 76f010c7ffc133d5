// Pulleys of a toothed belt: what their teeth bear, how close they may stand, how much play the belt has in them.
import { formula } from '../../formula';

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

export const beltPulleyFormulas = [
  pulleyToothShear,
  pulleyShearStrength,
  pulleysTouch,
  beltPlay,
  beltTeethOff,
  beltMass,
] as const;

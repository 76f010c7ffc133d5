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

/** Force (N) that the belt's teeth may pass on; F_6 (N) is that of six teeth in mesh at the reference width, f_n what is left of it at speed. */
export const beltTeethCapacity = formula({
  key: 'gears.beltTeethCapacity',
  symbol: 'F_zul',
  name: 'Effective tension that the teeth may pass on',
  unit: 'N',
  given: { F_6: 'N', k_w: '1', k_z: '1', f_n: '1' },
  text: 'F_6 * k_w * k_z * f_n',
  source: ISO,
  validity: 'At least two teeth in mesh; more than six do not count.',
  domain: { f_n: [0.3, 1] },
  of: (g) => g.F_6 * g.k_w * g.k_z * g.f_n,
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

export const beltStrengthFormulas = [
  beltWidthFactor,
  beltTeethCapacity,
  beltCordCapacity,
  beltPeakTension,
  beltCordTension,
  leastBeltTension,
  beltSpecificStiffness,
  beltWindUp,
  beltCordRoom,
] as const;

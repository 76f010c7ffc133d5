// How stiff a mesh is along its line of action: steel teeth after ISO 6336-1, others by their modulus.
import { formula } from '../../formula';

const ISO = 'ISO 6336-1:2006, tooth stiffness, method B (from memory)';
const teeth = [17, 120] as const;
const shift = [-0.2, 0.6] as const;

/**
 * Compliance (m²/N) of a pair of steel disc teeth, per unit of width. z_n are virtual tooth numbers; q_0 is the unit of
 * the standard, 1 mm µm/N = 1e-9 m²/N.
 */
export const toothCompliance = formula({
  key: 'gears.toothCompliance',
  symbol: 'q_pr',
  name: 'Compliance of a pair of teeth',
  unit: 'm^2/N',
  given: { q_0: 'm^2/N', z_n1: '1', z_n2: '1', x_1: '1', x_2: '1' },
  text: 'q_0 * (0.04723 + 0.15551 / z_n1 + 0.25791 / z_n2 - 0.00635 * x_1 - 0.11654 * x_1 / z_n1 - 0.00193 * x_2 - 0.24188 * x_2 / z_n2 + 0.00529 * x_1^2 + 0.00182 * x_2^2)',
  source: ISO,
  validity: 'Steel, x_1 ≥ x_2, −0.5 ≤ x_1 + x_2 ≤ 2. For a ring gear take z_n2 as unbounded.',
  domain: { q_0: [1e-9, 1e-9], z_n1: teeth, z_n2: teeth, x_1: shift, x_2: shift },
  of: (g) =>
    g.q_0 *
    (0.04723 +
      0.15551 / g.z_n1 +
      0.25791 / g.z_n2 -
      0.00635 * g.x_1 -
      (0.11654 * g.x_1) / g.z_n1 -
      0.00193 * g.x_2 -
      (0.24188 * g.x_2) / g.z_n2 +
      0.00529 * g.x_1 * g.x_1 +
      0.00182 * g.x_2 * g.x_2),
});

/** Factor for a basic rack other than h_fP = 1.2 and 20°; alpha_n in rad, taken in degrees by the standard. */
export const rackStiffnessFactor = formula({
  key: 'gears.rackStiffnessFactor',
  symbol: 'C_B',
  name: 'Basic rack factor of the stiffness',
  unit: '1',
  given: { h_fP: '1', alpha_n: 'rad' },
  text: '(1 + 0.5 * (1.2 - h_fP)) * (1 - 0.02 * (20 - alpha_n * 180 / pi))',
  source: ISO,
  domain: { h_fP: [1, 1.4], alpha_n: [0.26, 0.44] },
  of: (g) => (1 + 0.5 * (1.2 - g.h_fP)) * (1 - 0.02 * (20 - (g.alpha_n * 180) / Math.PI)),
});

/** Stiffness (N/m²) of a single pair of steel teeth per width, square to the flanks; 0.8 corrects theory to measurement. */
export const singleStiffness = formula({
  key: 'gears.singleStiffness',
  symbol: 'c_pr',
  name: 'Stiffness of a single pair of teeth',
  unit: 'N/m^2',
  given: { C_R: '1', C_B: '1', beta: 'rad', q_pr: 'm^2/N' },
  text: '0.8 * C_R * C_B * cos(beta) / q_pr',
  source: ISO,
  validity:
    'Steel on steel, specific load K_A F_t/b of 100 N/mm or more. C_R is 1 for solid discs, less for thin rims.',
  domain: { C_R: [0.6, 1], C_B: [0.8, 1.1], beta: [0, 0.6], q_pr: [5e-11, 1e-10] },
  of: (g) => (0.8 * g.C_R * g.C_B * Math.cos(g.beta)) / g.q_pr,
});

/** Stiffness (N/m²) at a light load w (N/m) below the 100 N/mm for which w_0 (N/m) stands: the teeth touch less. */
export const lightLoadStiffness = formula({
  key: 'gears.lightLoadStiffness',
  symbol: 'c_w',
  name: 'Stiffness of a pair of teeth at light load',
  unit: 'N/m^2',
  given: { c_pr: 'N/m^2', w: 'N/m', w_0: 'N/m' },
  text: 'c_pr * (w / w_0)^0.25',
  source: ISO,
  validity: 'w below w_0 = 100 N/mm.',
  domain: { c_pr: [1e10, 2e10], w: [5e3, 1e5], w_0: [1e5, 1e5] },
  of: (g) => g.c_pr * (g.w / g.w_0) ** 0.25,
});

/** Stiffness (N/m²) of teeth of other materials: steel's times the mean modulus over that of steel. */
export const stiffnessByModulus = formula({
  key: 'gears.stiffnessByModulus',
  symbol: 'c_m',
  name: 'Stiffness of a pair of teeth by modulus',
  unit: 'N/m^2',
  given: { c_pr: 'N/m^2', E_1: 'Pa', E_2: 'Pa', E_St: 'Pa' },
  text: 'c_pr * 2 * E_1 * E_2 / ((E_1 + E_2) * E_St)',
  source: ISO,
  validity:
    'Solid teeth of linear material. For printed plastic an estimate: take the modulus at tooth temperature and load time, times the solid fraction.',
  domain: { c_pr: [1e10, 2e10], E_1: [1e9, 2e11], E_2: [1e9, 2e11], E_St: [2e11, 2.1e11] },
  of: (g) => (g.c_pr * 2 * g.E_1 * g.E_2) / ((g.E_1 + g.E_2) * g.E_St),
});

/** Stiffness (N/m²) of the mesh as a mean over the changing number of pairs in contact. */
export const meshStiffness = formula({
  key: 'gears.meshStiffness',
  symbol: 'c_gamma',
  name: 'Mesh stiffness',
  unit: 'N/m^2',
  given: { c_pr: 'N/m^2', eps_alpha: '1' },
  text: 'c_pr * (0.75 * eps_alpha + 0.25)',
  source: ISO,
  validity: 'eps_alpha ≥ 1.2 for spur gears.',
  domain: { c_pr: [1e10, 2e10], eps_alpha: [1.2, 2] },
  of: (g) => g.c_pr * (0.75 * g.eps_alpha + 0.25),
});

/** Torsional stiffness (N m/rad) of a mesh of width b (m), felt at the gear of base diameter d_b (m) with its mate held. */
export const meshTorsionalStiffness = formula({
  key: 'gears.meshTorsionalStiffness',
  symbol: 'k_mesh',
  name: 'Torsional stiffness of the mesh',
  unit: 'N m/rad',
  given: { c_gamma: 'N/m^2', b: 'm', d_b: 'm' },
  text: 'c_gamma * b * (d_b / 2)^2',
  source: 'Statics: force along the line of action at the base radius',
  domain: { c_gamma: [1e8, 2e10], b: [5e-3, 0.05], d_b: [0.01, 0.2] },
  of: (g) => g.c_gamma * g.b * (g.d_b / 2) ** 2,
});

export const meshStiffnessFormulas = [
  toothCompliance,
  rackStiffnessFactor,
  singleStiffness,
  lightLoadStiffness,
  stiffnessByModulus,
  meshStiffness,
  meshTorsionalStiffness,
] as const;

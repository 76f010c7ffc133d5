// Stress in a screw while it is tightened and in service, and under its head.
import { formula } from '../formula';

const vdi = 'VDI 2230 Part 1, stress of a tightened screw (from memory)';

/** Torque (N m) that tightening leaves in the thread: pitch and thread friction, without that under the head. */
export const threadTorque = formula({
  key: 'fasteners.threadTorque',
  symbol: 'T_G',
  name: 'Torque in the thread',
  unit: 'N m',
  given: { F_i: 'N', P: 'm', mu_t: '1', d_2: 'm' },
  text: 'F_i * (P / (2 * pi) + mu_t * d_2 / (2 * cos(pi / 6)))',
  source: 'VDI 2230 form of the tightening torque (Motosh), from memory',
  domain: { mu_t: [0.05, 0.3] },
  of: (g) => g.F_i * (g.P / (2 * Math.PI) + (g.mu_t * g.d_2) / (2 * Math.cos(Math.PI / 6))),
});

/** Tensile stress (Pa) in the thread. */
export const screwTension = formula({
  key: 'fasteners.screwTension',
  symbol: 'sigma_s',
  name: 'Tensile stress in a screw',
  unit: 'Pa',
  given: { F_b: 'N', A_s: 'm^2' },
  text: 'F_b / A_s',
  source: 'Mean stress over the stress area, ISO 898-1',
  of: (g) => g.F_b / g.A_s,
});

/** Torsional stress (Pa) that the thread’s torque puts on the circle of the stress area. */
export const screwTorsion = formula({
  key: 'fasteners.screwTorsion',
  symbol: 'tau_G',
  name: 'Torsional stress in a screw',
  unit: 'Pa',
  given: { T_G: 'N m', d_2: 'm', d_3: 'm' },
  text: '16 * T_G / (pi * ((d_2 + d_3) / 2)^3)',
  source: vdi,
  of: (g) => (16 * g.T_G) / (Math.PI * ((g.d_2 + g.d_3) / 2) ** 3),
});

/** Stress (Pa) that counts against yield: k_tau is the share of the torsion left, 1 while tightening, 0.5 in service. */
export const screwStress = formula({
  key: 'fasteners.screwStress',
  symbol: 'sigma_red',
  name: 'Equivalent stress in a screw',
  unit: 'Pa',
  given: { sigma_s: 'Pa', k_tau: '1', tau_G: 'Pa' },
  text: 'sqrt(sigma_s^2 + 3 * (k_tau * tau_G)^2)',
  source: vdi,
  domain: { k_tau: [0.5, 1] },
  of: (g) => Math.sqrt(g.sigma_s ** 2 + 3 * (g.k_tau * g.tau_G) ** 2),
});

/** Pressure (Pa) under a head or washer of outer diameter D_w on a hole D_h (m). */
export const headPressure = formula({
  key: 'fasteners.headPressure',
  symbol: 'p_h',
  name: 'Pressure under the head',
  unit: 'Pa',
  given: { F_b: 'N', D_w: 'm', D_h: 'm' },
  text: '4 * F_b / (pi * (D_w^2 - D_h^2))',
  source: 'VDI 2230 Part 1, surface pressure (from memory)',
  validity: 'Even pressure on a ring; the seat not sunk in.',
  domain: { D_w: [5, 10], D_h: [1, 4] },
  of: (g) => (4 * g.F_b) / (Math.PI * (g.D_w ** 2 - g.D_h ** 2)),
});

/** Shear strength (Pa) of a screw’s or nut’s steel; a_v by class. */
export const screwShearStrength = formula({
  key: 'fasteners.screwShearStrength',
  symbol: 'tau_m',
  name: 'Shear strength of a screw',
  unit: 'Pa',
  given: { a_v: '1', R_m: 'Pa' },
  text: 'a_v * R_m',
  source: 'EN 1993-1-8:2005, Table 3.4 (from memory)',
  domain: { a_v: [0.5, 0.6] },
  of: (g) => g.a_v * g.R_m,
});

export const stressFormulas = [
  threadTorque,
  screwTension,
  screwTorsion,
  screwStress,
  headPressure,
  screwShearStrength,
] as const;

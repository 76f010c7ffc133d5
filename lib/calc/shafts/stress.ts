// Nominal stress in a solid round shaft under bending and torque, and what it has left to yielding.
import { formula } from '../formula';

const mechanics = 'Strength of materials, solid round section';

/** Bending moment of two planes taken together, N m. */
export const resultantMoment = formula({
  key: 'shafts.resultantMoment',
  symbol: 'M_b',
  name: 'Bending moment of both planes',
  unit: 'N m',
  given: { M_y: 'N m', M_z: 'N m' },
  text: 'sqrt(M_y^2 + M_z^2)',
  source: 'Sum of vectors at right angles',
  of: (g) => Math.sqrt(g.M_y ** 2 + g.M_z ** 2),
});

/** Bending stress at the surface, Pa. */
export const bendingStress = formula({
  key: 'shafts.bendingStress',
  symbol: 'sigma_b',
  name: 'Bending stress of a shaft',
  unit: 'Pa',
  given: { M_b: 'N m', d: 'm' },
  text: '32 * M_b / (pi * d^3)',
  source: mechanics,
  of: (g) => (32 * g.M_b) / (Math.PI * g.d ** 3),
});

/** Shear stress of torque at the surface, Pa. */
export const torsionStress = formula({
  key: 'shafts.torsionStress',
  symbol: 'tau_t',
  name: 'Torsion stress of a shaft',
  unit: 'Pa',
  given: { T: 'N m', d: 'm' },
  text: '16 * T / (pi * d^3)',
  source: mechanics,
  of: (g) => (16 * g.T) / (Math.PI * g.d ** 3),
});

/** Tension or compression of a thrust through the shaft, Pa. */
export const thrustStress = formula({
  key: 'shafts.thrustStress',
  symbol: 'sigma_a',
  name: 'Stress of a thrust in a shaft',
  unit: 'Pa',
  given: { F_a: 'N', d: 'm' },
  text: '4 * F_a / (pi * d^2)',
  source: mechanics,
  of: (g) => (4 * g.F_a) / (Math.PI * g.d ** 2),
});

/** Bending moment that stresses the surface as much as a moment and a thrust together, N m. */
export const momentWithThrust = formula({
  key: 'shafts.momentWithThrust',
  symbol: 'M_b',
  name: 'Bending moment with the thrust counted in',
  unit: 'N m',
  given: { M_b: 'N m', F_a: 'N', d: 'm' },
  text: 'M_b + abs(F_a) * d / 8',
  source: 'Derived: 4 F/(π d²) = 32 (F d/8)/(π d³)',
  validity: 'Solid round shaft. The thrust is counted where the moment is, whichever way it runs.',
  of: (g) => g.M_b + (Math.abs(g.F_a) * g.d) / 8,
});

/** Stress that strains a ductile material as much as normal and shear stress together, Pa. */
export const equivalentStress = formula({
  key: 'shafts.equivalentStress',
  symbol: 'sigma_v',
  name: 'Equivalent stress (von Mises)',
  unit: 'Pa',
  given: { sigma: 'Pa', tau_t: 'Pa' },
  text: 'sqrt(sigma^2 + 3 * tau_t^2)',
  source: 'Distortion energy; DIN 743-1, Shigley ch. 5 (from memory)',
  validity: 'Ductile materials.',
  of: (g) => Math.sqrt(g.sigma ** 2 + 3 * g.tau_t ** 2),
});

/** How far the stress is from yielding, as a factor. */
export const yieldFactor = formula({
  key: 'shafts.yieldFactor',
  symbol: 'n_y',
  name: 'Factor against yielding',
  unit: '1',
  given: { S_y: 'Pa', sigma_v: 'Pa' },
  text: 'S_y / sigma_v',
  source: 'Definition',
  of: (g) => g.S_y / g.sigma_v,
});

/** A moment or torque with the shock factor on it, N m. */
export const withShock = formula({
  key: 'shafts.withShock',
  symbol: 'M_K',
  name: 'Moment or torque with shocks',
  unit: 'N m',
  given: { K_A: '1', M: 'N m' },
  text: 'K_A * M',
  source: 'Application factor as ISO 6336-6 has it for teeth',
  of: (g) => g.K_A * g.M,
});

/** Least diameter that keeps a factor n against yielding under a bending moment and a torque, m; K_s raises both stresses. */
export const leastDiameterStatic = formula({
  key: 'shafts.leastDiameterStatic',
  symbol: 'd_y',
  name: 'Least diameter against yielding',
  unit: 'm',
  given: { n: '1', K_s: '1', M_b: 'N m', T: 'N m', S_y: 'Pa' },
  text: 'cbrt(16 * n * K_s / (pi * S_y) * sqrt(4 * M_b^2 + 3 * T^2))',
  source: 'Distortion energy, solved for the diameter',
  validity: 'Solid round shaft of a ductile material.',
  of: (g) => Math.cbrt(((16 * g.n * g.K_s) / (Math.PI * g.S_y)) * Math.sqrt(4 * g.M_b ** 2 + 3 * g.T ** 2)),
});

/** The diameter that serves against both, m. */
export const governingDiameter = formula({
  key: 'shafts.governingDiameter',
  symbol: 'd_min',
  name: 'Least diameter that serves',
  unit: 'm',
  given: { d_y: 'm', d_f: 'm' },
  text: 'max(d_y, d_f)',
  source: 'Definition',
  of: (g) => Math.max(g.d_y, g.d_f),
});

// Constants of the endurance of steel shafts, and how far a shaft may lean.

/** Constants of the surface factor for strengths in MPa, by edition: they moved. */
export const surfaceConstants = {
  ground: { label: 'Ground', a: 1.38, b: -0.067, older: { a: 1.58, b: -0.085 } },
  machined: { label: 'Machined or cold drawn', a: 3.04, b: -0.217, older: { a: 4.51, b: -0.265 } },
  rolled: { label: 'Hot rolled', a: 38.6, b: -0.65, older: { a: 57.7, b: -0.718 } },
  forged: { label: 'As forged', a: 54.9, b: -0.758, older: { a: 272, b: -0.995 } },
  source:
    'Shigley’s Mechanical Engineering Design, 11th ed., Table 6-2 (rolled and forged from memory); older: 9th ed. and before',
  basis: 'sourced',
} as const;

/** Factor for scatter of endurance by reliability, with the normal deviate of it. */
export const reliabilityFactors = {
  rows: [
    { reliability: 0.5, z: 0, k: 1 },
    { reliability: 0.9, z: 1.288, k: 0.897 },
    { reliability: 0.99, z: 2.326, k: 0.814 },
    { reliability: 0.999, z: 3.091, k: 0.753 },
  ],
  source: 'Shigley’s Mechanical Engineering Design, Table 6-5 (from memory)',
  basis: 'memory',
} as const;

/** Endurance of a polished steel specimen stops rising here, Pa. */
export const enduranceCap = {
  value: 700e6,
  source: 'Shigley’s Mechanical Engineering Design, eq. 6-8 (from memory)',
  basis: 'memory',
} as const;

/** Cycles between which the finite-life line of steel runs. */
export const finiteLife = {
  from: { value: 1e3, source: 'Shigley’s Mechanical Engineering Design, ch. 6 (from memory)' },
  to: { value: 1e6, source: 'Shigley’s Mechanical Engineering Design, ch. 6 (from memory)' },
} as const;

// Factors of deep-groove ball bearings: thrust, static load, greatest thrust.

const table3 = 'ISO 281:2007, Table 3, single-row deep groove, normal clearance (from memory)';

/** e and Y over f_0 F_a/C_0, rising. */
export const thrustTable = {
  rows: [
    { ratio: 0.172, e: 0.19, Y: 2.3 },
    { ratio: 0.345, e: 0.22, Y: 1.99 },
    { ratio: 0.689, e: 0.26, Y: 1.71 },
    { ratio: 1.03, e: 0.28, Y: 1.55 },
    { ratio: 1.38, e: 0.3, Y: 1.45 },
    { ratio: 2.07, e: 0.34, Y: 1.31 },
    { ratio: 3.45, e: 0.38, Y: 1.15 },
    { ratio: 5.17, e: 0.42, Y: 1.04 },
    { ratio: 6.89, e: 0.44, Y: 1 },
  ],
  source: table3,
  basis: 'memory',
} as const;

/** f_0 of a bearing whose sheet does not state it: brings the ratio onto the older column F_a/C_0. */
export const geometryFactor = {
  value: 12.3,
  low: 11,
  high: 16,
  source: 'Ratio of the columns f_0·F_a/C_0 and F_a/C_0 of the two editions of the table; range from memory',
  basis: 'memory',
} as const;

/** Least static factor s_0 of ball bearings by how they run. */
export const staticFactors = {
  quiet: { label: 'Smooth, rare turning', value: 0.5, low: 0.5, high: 1 },
  normal: { label: 'Normal running', value: 1, low: 0.5, high: 1 },
  shock: { label: 'Shock', value: 2, low: 1.5, high: 3 },
  source: 'ISO 76:2006, guide values as makers’ catalogues restate them (from memory)',
  basis: 'memory',
} as const;

/** Greatest thrust over C_0 of small and light series. */
export const thrustShare = {
  value: 0.25,
  low: 0.25,
  high: 0.5,
  source: 'Bearing makers’ catalogues (from memory): 0.25 of C_0 for small and light series, 0.5 else',
  basis: 'memory',
} as const;

// Shafts that are not round: eccentricity of the polygon profiles, and torsion sections of squares and hexagons.

/** Eccentricity of P3G over its mean diameter: the least of the standard’s sizes from 14 mm to 50 mm. */
export const p3gShare = {
  value: 0.031,
  low: 0.031,
  high: 0.034,
  source: 'DIN 32711-1 sizes, e.g. 20 mm with 0.63 mm, 30 mm with 1 mm (from memory)',
  basis: 'memory',
} as const;

/** P4C across the flats over across the corners: the shallowest of the standard’s sizes, which bears least. */
export const p4cShare = {
  value: 0.875,
  low: 0.785,
  high: 0.875,
  source: 'DIN 32712-1 sizes, e.g. 40 mm with 35 mm, 30 mm with 25 mm (from memory)',
  basis: 'memory',
} as const;

/** Torsion section over the cube of the width across flats, by the number of flats. */
export const torsionSections = {
  4: 0.208,
  6: 0.188,
  source: 'Roark’s Formulas for Stress and Strain (from memory)',
  basis: 'memory',
} as const;

/** What rounding or a bevel takes off each end of a flat, over its width. Judgement. */
export const cornerShare = { value: 0.1, low: 0.05, high: 0.15, source: 'Judgement' } as const;

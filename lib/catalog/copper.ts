// Copper as a conductor: the numbers that leads and windings share.

const annealed = 'IEC 60028:1925, annealed copper, from memory';

export const copper = {
  /** Ω m at 20 °C. */
  resistivity20: { value: 1.7241e-8, unit: 'ohm m', source: annealed },
  /** 1/K, referred to 20 °C. Referring it to 25 °C overstates hot resistance by about 0.5 %. */
  alpha20: { value: 0.00393, unit: '1/K', source: annealed },
  /** K: where the straight line of resistance over temperature meets zero: 293.15 K − 1/alpha20. */
  zeroResistance: { value: 293.15 - 1 / 0.00393, unit: 'K', source: annealed },
  /** K, reference of `resistivity20` and `alpha20`. */
  reference: { value: 293.15, unit: 'K', source: annealed },
  /** K. */
  melting: { value: 1083 + 273.15, unit: 'K', source: 'Onderdonk’s worked form, 1083 °C' },
  /** J/(kg K). */
  specificHeat: { value: 385, unit: 'J/(kg K)', source: 'Handbook value, from memory' },
  /** kg/m³. */
  density: { value: 8960, unit: 'kg/m^3', source: 'Handbook value, from memory' },
} as const;

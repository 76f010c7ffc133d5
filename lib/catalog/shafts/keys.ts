// Parallel keys by shaft diameter, and the pressure a keyway bears.

interface ParallelKey {
  /** Shaft diameters in mm: above `over`, up to and including `to`. */
  readonly over: number;
  readonly to: number;
  /** Width, height, depth in the shaft, mm. */
  readonly b: number;
  readonly h: number;
  readonly t1: number;
}

/** What stands beside every size of the table. */
export const keySource = { source: 'DIN 6885-1, ISO/R 773 (from memory)', basis: 'memory' } as const;

export const parallelKeys: readonly ParallelKey[] = [
  { over: 6, to: 8, b: 2, h: 2, t1: 1.2 },
  { over: 8, to: 10, b: 3, h: 3, t1: 1.8 },
  { over: 10, to: 12, b: 4, h: 4, t1: 2.5 },
  { over: 12, to: 17, b: 5, h: 5, t1: 3 },
  { over: 17, to: 22, b: 6, h: 6, t1: 3.5 },
  { over: 22, to: 30, b: 8, h: 7, t1: 4 },
];

/** The key of a shaft diameter in mm; `undefined` where the table has none (up to 6 mm, above 30 mm). */
export function parallelKey(diameter: number): ParallelKey | undefined {
  return parallelKeys.find((row) => diameter > row.over && diameter <= row.to);
}

/** Pressure that the side of a keyway bears, Pa. Common practice, no source. */
export const keywayPressure = {
  steel: { label: 'Steel', value: 100e6, low: 100e6, high: 150e6 },
  castIron: { label: 'Cast iron', value: 50e6, low: 50e6, high: 80e6 },
  aluminium: { label: 'Aluminium', value: 60e6, low: 60e6, high: 100e6 },
  print: { label: 'Printed plastic', value: 5e6, low: 5e6, high: 15e6 },
} as const;

/** Stress factors of an end-milled keyway in bending and torsion. */
export const keywayNotch = {
  bending: 2.14,
  torsion: 3,
  source:
    'Peterson’s Stress Concentration Factors, as Shigley Table 7-1 (from memory): fillet 0.02 of the diameter',
  basis: 'memory',
} as const;

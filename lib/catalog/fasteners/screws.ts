// Metric screws: pitches, strength classes, limits of one thread, friction when tightened.

interface ScrewThread {
  readonly size: string;
  /** Nominal diameter and coarse pitch, mm; nominal stress area as printed, mm². */
  readonly d: number;
  readonly P: number;
  readonly area: number;
}

export const screwThreads = {
  rows: [
    { size: 'M2', d: 2, P: 0.4, area: 2.07 },
    { size: 'M2.5', d: 2.5, P: 0.45, area: 3.39 },
    { size: 'M3', d: 3, P: 0.5, area: 5.03 },
    { size: 'M4', d: 4, P: 0.7, area: 8.78 },
    { size: 'M5', d: 5, P: 0.8, area: 14.2 },
    { size: 'M6', d: 6, P: 1, area: 20.1 },
    { size: 'M8', d: 8, P: 1.25, area: 36.6 },
    { size: 'M10', d: 10, P: 1.5, area: 58 },
  ] satisfies readonly ScrewThread[],
  source:
    'ISO 261 coarse pitches; ISO 898-1 nominal stress areas (M3 to M10 read in public copies, M2 and M2.5 from memory)',
  basis: 'mixed',
} as const;

/** The thread of a size, e.g. `M3`; `undefined` where the table has none. */
export function screwThread(size: string): ScrewThread | undefined {
  return screwThreads.rows.find((row) => row.size === size);
}

/** Strength classes: proof strength and tensile strength, Pa, up to M16. */
export const strengthClasses = {
  '8.8': { proof: 580e6, tensile: 800e6 },
  '10.9': { proof: 830e6, tensile: 1040e6 },
  '12.9': { proof: 970e6, tensile: 1220e6 },
  source:
    'ISO 898-1, proof loads and tensile strength, sizes up to M16 (above: class 8.8 has 600 MPa and 830 MPa)',
  basis: 'sourced',
} as const;

/** Share of the proof force to draw a screw up to. */
export const preloadShare = {
  reopened: 0.75,
  lasting: 0.9,
  source: 'Shigley’s Mechanical Engineering Design, ch. 8',
  basis: 'sourced',
} as const;

/** Torque factor K by finish. */
export const torqueFactors = {
  black: { label: 'Black', value: 0.3 },
  zinc: { label: 'Zinc', value: 0.2 },
  oiled: { label: 'Oiled', value: 0.18 },
  cadmium: { label: 'Cadmium', value: 0.16 },
  antiSeize: { label: 'Anti-seize', value: 0.12 },
  source: 'Shigley’s Mechanical Engineering Design, Table 8-15 (from memory)',
  basis: 'memory',
} as const;

/** Limits of the M6-6H/6g thread, m, for strip areas. */
export const m6Limits = {
  nutMinorMax: 5.153e-3,
  screwPitchMin: 5.212e-3,
  screwOuterMin: 5.794e-3,
  nutPitchMax: 5.5e-3,
  source: 'ISO 965-2, M6-6H/6g (from memory)',
  basis: 'memory',
} as const;

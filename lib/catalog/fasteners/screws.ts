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

/** What a class of screw bears, Pa; `shear` its shear strength over its tensile strength. */
interface StrengthClass {
  readonly proof: number;
  readonly tensile: number;
  readonly yield: number;
  readonly shear: number;
}

/** Strength classes up to M16: proof strength, least tensile and yield (or 0.2 %) strength. */
export const strengthClasses = {
  '4.6': { proof: 225e6, tensile: 400e6, yield: 240e6, shear: 0.6 },
  '4.8': { proof: 310e6, tensile: 420e6, yield: 340e6, shear: 0.5 },
  '5.6': { proof: 280e6, tensile: 500e6, yield: 300e6, shear: 0.6 },
  '5.8': { proof: 380e6, tensile: 520e6, yield: 420e6, shear: 0.5 },
  '6.8': { proof: 440e6, tensile: 600e6, yield: 480e6, shear: 0.5 },
  '8.8': { proof: 580e6, tensile: 800e6, yield: 640e6, shear: 0.6 },
  '10.9': { proof: 830e6, tensile: 1040e6, yield: 940e6, shear: 0.5 },
  '12.9': { proof: 970e6, tensile: 1220e6, yield: 1100e6, shear: 0.5 },
  'A2-50': { proof: 210e6, tensile: 500e6, yield: 210e6, shear: 0.5 },
  'A2-70': { proof: 450e6, tensile: 700e6, yield: 450e6, shear: 0.5 },
  'A2-80': { proof: 600e6, tensile: 800e6, yield: 600e6, shear: 0.5 },
} as const satisfies Record<string, StrengthClass>;

export const strengthClassSource = {
  source:
    'ISO 898-1, sizes up to M16 (8.8, 10.9 and 12.9: proof and tensile strength read, the rest from memory; above M16 class 8.8 has 600 MPa and 830 MPa); A2: ISO 3506-1 (from memory), 0.2 % strength taken for the proof strength; shear over tensile strength: EN 1993-1-8, Table 3.4 (from memory; 12.9 as 10.9)',
  basis: 'mixed',
} as const;

export type StrengthClassKey = keyof typeof strengthClasses;

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

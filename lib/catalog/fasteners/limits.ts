// Limits of metric threads 6H/6g, and the sizes of heads, holes and washers, by size.

/** µm: greatest minor and pitch diameter of the nut, least pitch and outer diameter of the screw. */
interface ThreadLimits {
  readonly nutMinorMax: number;
  readonly nutPitchMax: number;
  readonly screwPitchMin: number;
  readonly screwOuterMin: number;
}

const limits: Readonly<Record<string, ThreadLimits>> = {
  M2: { nutMinorMax: 1679, nutPitchMax: 1830, screwPitchMin: 1654, screwOuterMin: 1886 },
  'M2.5': { nutMinorMax: 2138, nutPitchMax: 2303, screwPitchMin: 2117, screwOuterMin: 2380 },
  M3: { nutMinorMax: 2599, nutPitchMax: 2775, screwPitchMin: 2580, screwOuterMin: 2874 },
  M4: { nutMinorMax: 3422, nutPitchMax: 3663, screwPitchMin: 3433, screwOuterMin: 3838 },
  M5: { nutMinorMax: 4334, nutPitchMax: 4605, screwPitchMin: 4361, screwOuterMin: 4826 },
  M6: { nutMinorMax: 5153, nutPitchMax: 5500, screwPitchMin: 5212, screwOuterMin: 5794 },
  M8: { nutMinorMax: 6912, nutPitchMax: 7348, screwPitchMin: 7042, screwOuterMin: 7760 },
  M10: { nutMinorMax: 8676, nutPitchMax: 9206, screwPitchMin: 8862, screwOuterMin: 9732 },
};

export const threadLimitsSource = 'ISO 965-2, 6H/6g (from memory; they obey the tolerances of ISO 965-1)';

/** Limits of one thread; `undefined` where the table has none. */
export function threadLimits(size: string): ThreadLimits | undefined {
  return limits[size];
}

/** mm: seat of a head or washer: its outer diameter, and the clearance hole it stands on. */
interface ScrewSeat {
  /** Least diameter of the bearing face of a socket head cap screw. */
  readonly head: number;
  /** Outer diameter of a plain washer. */
  readonly washer: number;
  /** Clearance hole, medium series. */
  readonly hole: number;
  /** Greatest height of a plain hexagon nut. */
  readonly nut: number;
}

const seats: Readonly<Record<string, ScrewSeat>> = {
  M2: { head: 3.48, washer: 5, hole: 2.4, nut: 1.6 },
  'M2.5': { head: 4.18, washer: 6, hole: 2.9, nut: 2 },
  M3: { head: 5.07, washer: 7, hole: 3.4, nut: 2.4 },
  M4: { head: 6.53, washer: 9, hole: 4.5, nut: 3.2 },
  M5: { head: 8.03, washer: 10, hole: 5.5, nut: 4.7 },
  M6: { head: 9.38, washer: 12, hole: 6.6, nut: 5.2 },
  M8: { head: 12.33, washer: 16, hole: 9, nut: 6.8 },
  M10: { head: 15.33, washer: 20, hole: 11, nut: 8.4 },
};

export const screwSeatSource =
  'ISO 4762 bearing faces of heads, ISO 7089 washers, ISO 273 medium holes, ISO 4032 nuts (from memory)';

/** Head, washer, hole and nut of a size; `undefined` where the table has none. */
export function screwSeat(size: string): ScrewSeat | undefined {
  return seats[size];
}

/** Friction in dry, uncoated or lightly oiled steel threads and under heads. */
export const threadFriction = {
  low: 0.08,
  value: 0.14,
  high: 0.2,
  source: 'VDI 2230 Part 1, Table A5, classes A to C (from memory)',
  basis: 'memory',
} as const;

/** Friction between metal faces of a joint, at the low end: it decides on slip. */
export const metalJointFriction = {
  value: 0.15,
  source: 'VDI 2230 Part 1, Table A6, degreased (from memory)',
  basis: 'memory',
} as const;

/** Nuts as they come with screws: class 8. */
export const nutStrength = { tensile: 800e6, source: 'ISO 898-2, class 8 (from memory)' } as const;

/** Motor faces and other castings of which nothing is known: the low end of aluminium. */
export const softAluminium = {
  tensile: 150e6,
  source: 'Common practice, no source: low end of cast aluminium',
} as const;

/** Shear strength of ductile metal over its tensile strength. */
export const metalShear = {
  value: 0.6,
  source: 'Common practice, no source: shear over tension of ductile metal',
} as const;

/** Steel of screws, Pa. */
export const screwModulus = { value: 205e9, source: 'VDI 2230 Part 1, steel screws (from memory)' } as const;

/** What tightening by torque may leave at worst and at best, over the nominal preload. */
export const preloadScatter = {
  low: 0.7,
  high: 1.3,
  source:
    'Shigley’s Mechanical Engineering Design, ch. 8: about 30 % either way by torque wrench (from memory)',
  basis: 'memory',
} as const;

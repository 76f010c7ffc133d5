// Set screws: what holds a hub, how tight they are driven, and how their point counts.

const pound = 4.4482216152605;
const inch = 0.0254;

interface SetScrew {
  readonly size: string;
  /** Nominal diameter, m. */
  readonly d: number;
  /** Seating torque, N m, and axial holding force of a cup point, N. */
  readonly seating: number;
  readonly holding: number;
}

/** Written in the units of the source: inches, lbf in, lbf. */
const screw = (size: string, d: number, seating: number, holding: number): SetScrew => ({
  size,
  d: d * inch,
  seating: seating * pound * inch,
  holding: holding * pound,
});

export const setScrewSource = {
  source:
    'Shigley’s Mechanical Engineering Design, 9th ed., Table 7-4 (from memory); one web chart gives 400 lbf for 1/4 in instead of 1000',
  basis: 'memory',
} as const;

export const setScrews: readonly SetScrew[] = [
  screw('#4', 0.112, 5, 160),
  screw('#6', 0.138, 10, 250),
  screw('#8', 0.164, 20, 385),
  screw('#10', 0.19, 36, 540),
  screw('1/4', 0.25, 87, 1000),
  screw('5/16', 0.3125, 165, 1500),
  screw('3/8', 0.375, 290, 2000),
  screw('1/2', 0.5, 620, 3000),
];

/**
 * Holding force (N) of a cup-point screw of a diameter in m: a straight line in the logarithms between inch sizes, so
 * that metric sizes can be read. `undefined` outside #4 to 1/2 in (2.85 mm to 12.7 mm).
 */
export function cupHolding(d: number): number | undefined {
  for (const [i, upper] of setScrews.entries()) {
    const lower = setScrews[i - 1];
    if (lower === undefined || d < lower.d || d > upper.d) continue;
    const share = Math.log(d / lower.d) / Math.log(upper.d / lower.d);
    return lower.holding * (upper.holding / lower.holding) ** share;
  }
  return undefined;
}

/** How the point counts, over a cup. */
export const pointFactors = {
  cup: 1,
  cone: 1.07,
  flat: 0.92,
  oval: 0.9,
  source: 'Makers’ charts of socket set screws',
  basis: 'sourced',
} as const;

/** Factor to keep below the holding torque. */
export const setScrewFactor = {
  steady: { value: 2, low: 1.5, high: 2 },
  swinging: { value: 8, low: 4, high: 8 },
  source: 'Shigley’s Mechanical Engineering Design, ch. 7',
  basis: 'sourced',
} as const;

interface SeatingTorque {
  readonly size: string;
  /** N m, by two makers. */
  readonly one: number;
  readonly other: number;
}

/** Seating torque of metric socket set screws of alloy steel: two makers’ charts, apart by up to 15 % from M4 up, 29 % below. */
export const seatingTorques: readonly SeatingTorque[] = [
  { size: 'M2', one: 0.21, other: 0.15 },
  { size: 'M2.5', one: 0.57, other: 0.42 },
  { size: 'M3', one: 0.92, other: 0.8 },
  { size: 'M4', one: 2.2, other: 2.2 },
  { size: 'M5', one: 4, other: 4.6 },
  { size: 'M6', one: 7.2, other: 7.8 },
  { size: 'M8', one: 17, other: 18 },
  { size: 'M10', one: 33, other: 36 },
];

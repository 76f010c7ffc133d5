// Common single-row deep-groove ball bearings: boundary sizes and ratings of one maker, and how far another differs.

export interface BearingSize {
  /** Basic number, e.g. 608 or 6802. */
  readonly number: string;
  /** Bore, outer diameter, width in mm. */
  readonly d: number;
  readonly D: number;
  readonly B: number;
  /** Dynamic and static rating in N. */
  readonly C: number;
  readonly C0: number;
}

/** What stands beside every rating of this table: a rating is worth as much as its maker. */
export const bearingSource = {
  source: 'TPI bearing catalogue CAT. NO. 2202/TE, single-row deep groove and miniature tables',
  basis: 'sourced',
} as const;

const size = (number: string, d: number, D: number, B: number, C: number, C0: number): BearingSize => ({
  number,
  d,
  D,
  B,
  C,
  C0,
});

export const bearingSizes: readonly BearingSize[] = [
  size('626', 6, 19, 6, 2340, 885),
  size('607', 7, 19, 6, 2240, 910),
  size('608', 8, 22, 7, 3350, 1400),
  size('629', 9, 26, 8, 4550, 1960),
  size('6000', 10, 26, 8, 4550, 1960),
  size('6001', 12, 28, 8, 5100, 2390),
  size('6002', 15, 32, 9, 5600, 2830),
  size('6003', 17, 35, 10, 6800, 3350),
  size('6004', 20, 42, 12, 9400, 5050),
  size('6200', 10, 30, 9, 5100, 2390),
  size('6201', 12, 32, 10, 6100, 2750),
  size('6202', 15, 35, 11, 7750, 3600),
  size('6203', 17, 40, 12, 9600, 4600),
  size('6204', 20, 47, 14, 12800, 6650),
  size('6800', 10, 19, 5, 1830, 925),
  size('6801', 12, 21, 5, 1920, 1040),
  size('6802', 15, 24, 5, 2080, 1260),
  size('6803', 17, 26, 5, 2230, 1460),
  size('6804', 20, 32, 7, 4000, 2470),
  size('6805', 25, 37, 7, 4300, 2950),
  size('6806', 30, 42, 7, 4700, 3650),
  size('6808', 40, 52, 7, 5100, 4400),
];

/** Bearings of a second maker, by number: dynamic and static rating in N. Source: a maker’s 62xx table as transcribed publicly. */
export const secondMaker: Readonly<Record<string, { readonly C: number; readonly C0: number }>> = {
  '6200': { C: 5100, C0: 2390 },
  '6201': { C: 6800, C0: 3050 },
  '6202': { C: 7650, C0: 3750 },
  '6203': { C: 9550, C0: 4800 },
  '6204': { C: 12800, C0: 6600 },
};

/**
 * Spread of the ratings between makers, as a share either way. Seen
 * up to 0.115 between two makers’ 62xx; 0.25 for miniature bearings is from memory.
 */
export const ratingSpread = {
  light: 0.115,
  miniature: 0.25,
  source: 'Two makers’ tables; miniature from memory',
} as const;

interface Range {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Ratings of a row in N with the range between makers. Three-digit numbers count as miniature. An unnamed bearing is
 * judged by the low end.
 */
export function ratingRange(
  row: BearingSize,
): typeof bearingSource & { readonly C: Range; readonly C0: Range } {
  const spread = row.number.length === 3 ? ratingSpread.miniature : ratingSpread.light;
  const range = (value: number) => ({ value, low: value * (1 - spread), high: value * (1 + spread) });
  return { ...bearingSource, C: range(row.C), C0: range(row.C0) };
}

/** The row of a basic number; `undefined` when the table has none, so that its ratings are asked for. */
export function bearingSize(number: string): BearingSize | undefined {
  return bearingSizes.find((row) => row.number === number);
}

/**
 * Bore in mm that a basic number means: the last digit of three-digit numbers, 10, 12, 15, 17 for codes 00 to 03, else
 * five times the code. Source: ISO 15 dimension plan as makers number it.
 */
export function boreOfNumber(number: string): number {
  if (number.length === 3) return Number(number.slice(-1));
  const code = Number(number.slice(-2));
  return [10, 12, 15, 17][code] ?? 5 * code;
}

// Common single-row deep-groove ball bearings: boundary sizes, ratings and speeds, whose they are, and how far makers differ.
import type { Basis } from '../value';

/** Where a row comes from: a rating is worth as much as its maker. */
export interface BearingSource {
  readonly source: string;
  readonly basis: Basis;
}

/** Rows read in one maker’s catalogue. */
export const bearingSource: BearingSource = {
  source: 'TPI bearing catalogue CAT. NO. 2202/TE, single-row deep groove and miniature tables',
  basis: 'sourced',
};

/** Rows of miniature bearings that no source here holds. */
export const rememberedSource: BearingSource = {
  source:
    'Makers’ catalogues of miniature bearings (from memory; agree with ISO 281 and ISO 76 worked from balls and pitch)',
  basis: 'memory',
};

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
  /** Speed limits with grease in 1/min: open or shielded; with rubbing seals, `null` where not made or not known. */
  readonly speed: number;
  readonly sealedSpeed: number | null;
  readonly from: BearingSource;
}

type Row = readonly [
  number: string,
  d: number,
  D: number,
  B: number,
  C: number,
  C0: number,
  speed: number,
  sealedSpeed: number | null,
];

const rowsOf = (from: BearingSource, rows: readonly Row[]): BearingSize[] =>
  rows.map(([number, d, D, B, C, C0, speed, sealedSpeed]) => ({
    number,
    d,
    D,
    B,
    C,
    C0,
    speed,
    sealedSpeed,
    from,
  }));

const read = rowsOf(bearingSource, [
  ['626', 6, 19, 6, 2340, 885, 34000, 30000],
  ['607', 7, 19, 6, 2240, 910, 34000, 27800],
  ['627', 7, 22, 7, 3350, 1400, 32000, 23600],
  ['608', 8, 22, 7, 3350, 1400, 32000, 23000],
  ['628', 8, 24, 8, 4000, 1590, 31000, null],
  ['699', 9, 20, 6, 2480, 1090, 32000, null],
  ['609', 9, 24, 7, 3400, 1450, 31000, 22000],
  ['629', 9, 26, 8, 4550, 1960, 30000, 20700],
  ['6000', 10, 26, 8, 4550, 1960, 29000, 21000],
  ['6001', 12, 28, 8, 5100, 2390, 26000, 18000],
  ['6002', 15, 32, 9, 5600, 2830, 22000, 15000],
  ['6003', 17, 35, 10, 6800, 3350, 20000, 14000],
  ['6004', 20, 42, 12, 9400, 5050, 18000, 11000],
  ['6005', 25, 47, 12, 10100, 5850, 15000, 9400],
  ['6006', 30, 55, 13, 13200, 8300, 13000, 7700],
  ['6200', 10, 30, 9, 5100, 2390, 25000, 18000],
  ['6201', 12, 32, 10, 6100, 2750, 22000, 16000],
  ['6202', 15, 35, 11, 7750, 3600, 19000, 15000],
  ['6203', 17, 40, 12, 9600, 4600, 18000, 12000],
  ['6204', 20, 47, 14, 12800, 6650, 16000, 10000],
  ['6205', 25, 52, 15, 14000, 7850, 13000, 8900],
  ['6206', 30, 62, 16, 19500, 11300, 11000, 7300],
  ['6800', 10, 19, 5, 1830, 925, 32000, 24000],
  ['6801', 12, 21, 5, 1920, 1040, 29000, 20000],
  ['6802', 15, 24, 5, 2080, 1260, 26000, 17000],
  ['6803', 17, 26, 5, 2230, 1460, 24000, 15000],
  ['6804', 20, 32, 7, 4000, 2470, 21000, 13000],
  ['6805', 25, 37, 7, 4300, 2950, 18000, 10000],
  ['6806', 30, 42, 7, 4700, 3650, 15000, 8800],
  ['6808', 40, 52, 7, 5100, 4400, 12000, null],
  ['6900', 10, 22, 6, 2700, 1270, 30000, 21000],
  ['6901', 12, 24, 6, 2890, 1460, 27000, 19000],
  ['6902', 15, 28, 7, 3650, 2000, 24000, 16000],
  ['6903', 17, 30, 7, 4650, 2580, 22000, 14000],
  ['6904', 20, 37, 9, 6400, 3700, 19000, 12000],
  ['6905', 25, 42, 9, 7050, 4550, 16000, 9800],
  ['6906', 30, 47, 9, 7250, 5000, 14000, 8400],
]);

const remembered = rowsOf(rememberedSource, [
  ['603', 3, 9, 5, 570, 187, 50000, null],
  ['604', 4, 12, 4, 960, 345, 48000, null],
  ['605', 5, 14, 5, 1330, 505, 40000, null],
  ['606', 6, 17, 6, 2260, 835, 38000, null],
  ['623', 3, 10, 4, 630, 218, 50000, null],
  ['624', 4, 13, 5, 1300, 485, 40000, null],
  ['625', 5, 16, 5, 1730, 670, 36000, null],
  ['683', 3, 7, 3, 390, 130, 63000, null],
  ['684', 4, 9, 4, 640, 225, 53000, null],
  ['685', 5, 11, 5, 715, 282, 45000, null],
  ['686', 6, 13, 5, 1080, 440, 40000, null],
  ['687', 7, 14, 5, 1170, 510, 40000, null],
  ['688', 8, 16, 5, 1610, 710, 36000, null],
  ['689', 9, 17, 5, 1330, 665, 36000, null],
  ['MR63', 3, 6, 2.5, 208, 74, 60000, null],
  ['MR84', 4, 8, 3, 395, 140, 53000, null],
  ['MR85', 5, 8, 2.5, 218, 90, 53000, null],
  ['MR105', 5, 10, 4, 430, 168, 50000, null],
  ['MR106', 6, 10, 3, 495, 218, 45000, null],
  ['MR126', 6, 12, 4, 715, 292, 43000, null],
  ['MR128', 8, 12, 3.5, 545, 274, 40000, null],
  ['MR148', 8, 14, 4, 820, 385, 38000, null],
]);

/** Every bearing of the table. Widths of the remembered rows are those of shielded bearings. */
export const bearingSizes: readonly BearingSize[] = [...read, ...remembered];

/** Bearings of a second maker, by number: dynamic and static rating in N. Source: a maker’s 62xx table as transcribed publicly. */
export const secondMaker: Readonly<Record<string, { readonly C: number; readonly C0: number }>> = {
  '6200': { C: 5100, C0: 2390 },
  '6201': { C: 6800, C0: 3050 },
  '6202': { C: 7650, C0: 3750 },
  '6203': { C: 9550, C0: 4800 },
  '6204': { C: 12800, C0: 6600 },
  '6205': { C: 14000, C0: 7850 },
  '6206': { C: 19500, C0: 11300 },
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
 * Ratings of a row in N with the range between makers. Bores below 10 mm count as miniature. An unnamed make is judged by
 * the low end.
 */
export function ratingRange(row: BearingSize): BearingSource & { readonly C: Range; readonly C0: Range } {
  const spread = row.d < 10 ? ratingSpread.miniature : ratingSpread.light;
  const range = (value: number) => ({ value, low: value * (1 - spread), high: value * (1 + spread) });
  return { C: range(row.C), C0: range(row.C0), ...row.from };
}

/** The row of a basic number; `undefined` when the table has none, so that its ratings are asked for. */
export function bearingSize(number: string): BearingSize | undefined {
  return bearingSizes.find((row) => row.number === number);
}

/**
 * Bore in mm that a basic number means: the last digit of three-digit and MR numbers, 10, 12, 15, 17 for codes 00 to 03,
 * else five times the code. Source: ISO 15 dimension plan as makers number it.
 */
export function boreOfNumber(number: string): number {
  if (number.length === 3 || number.startsWith('MR')) return Number(number.slice(-1));
  const code = Number(number.slice(-2));
  return [10, 12, 15, 17][code] ?? 5 * code;
}

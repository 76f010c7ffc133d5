// Toothed belts by profile and pitch: what their teeth and cords bear per width, mass, give, least pulley. All numbers in SI.
import type { Basis } from './value';

/** A force of a belt of reference width b_0, and the exponent with which it grows with the width. */
export interface BeltForce {
  readonly force: number;
  readonly width: number;
  readonly exponent: number;
  readonly source: string;
  readonly basis: Basis;
}

export interface Belt {
  readonly label: string;
  readonly pitch: number;
  /** What six teeth in mesh may pass on in continuous service. */
  readonly teeth: BeltForce;
  /** What the cords of an endless belt may carry in continuous service, pretension included. */
  readonly cords: BeltForce;
  /** Mass over area of belt, kg/m². */
  readonly mass: number;
  /** Stretch under the full allowable cord tension, with the range between makers. */
  readonly strain: { readonly value: number; readonly low: number; readonly high: number };
  /** Fewest teeth of a pulley at which the cords still bend for a full life. */
  readonly leastTeeth: number;
}

const HANDBOOK =
  'Handbook of timing belts, allowable working tension per inch of width, neoprene belts (SDP/SI, table 3)';
const POLYURETHANE = 'Published table of polyurethane belts with steel cords after DIN 7721';
const WIDTH = 'width exponent of ISO 5295:1987 (from memory)';
const inch = 25.4e-3;

/** Neoprene with glass cords: one working tension stands for the cords and for six teeth in mesh. */
function neoprene(force: number, width = inch, source = HANDBOOK, basis: Basis = 'mixed'): BeltForce {
  return { force, width, exponent: 1.14, source: `${source}; ${WIDTH}`, basis };
}

const glass = { value: 0.002, low: 0.001, high: 0.004 } as const;
const steel = { value: 0.004, low: 0.003, high: 0.005 } as const;

/** Where the columns that the rows do not cite come from. */
export const beltSource = {
  mass: 'ISO 5295:1987 for inch pitches, common practice for the others (from memory)',
  strain:
    'Steel cords: allowable tension over specific spring rate of published tables. Glass cords: common practice, no source',
  leastTeeth: 'ISO 5294:1989 and common practice (from memory)',
} as const;

function row(label: string, pitch: number, force: BeltForce, mass: number, leastTeeth: number): Belt {
  return { label, pitch, teeth: force, cords: force, mass, strain: glass, leastTeeth };
}

function metric(
  label: string,
  pitch: number,
  tooth: BeltForce,
  cords: number,
  mass: number,
  leastTeeth: number,
): Belt {
  const cord = { force: cords, width: 10e-3, exponent: 1, source: POLYURETHANE, basis: tooth.basis };
  return { label, pitch, teeth: tooth, cords: cord, mass, strain: steel, leastTeeth };
}

/** Six teeth of a polyurethane belt 10 mm wide at standstill, from the force of one tooth per width in N/cm. */
const sixTeeth = (perTooth: number, basis: Basis, source = POLYURETHANE): BeltForce => ({
  force: 6 * perTooth,
  width: 10e-3,
  exponent: 1,
  source,
  basis,
});

const SCALED = `${POLYURETHANE}, tooth of pitch 5 scaled with the pitch; that of pitch 20 agrees within 6 %`;

export const belts = {
  mxl: row('MXL, 2.032 mm, trapezoidal (ISO 5296)', 2.032e-3, neoprene(80), 1.1, 10),
  xl: row('XL, 5.08 mm, trapezoidal (ISO 5296)', 5.08e-3, neoprene(125), 2.3, 10),
  l: row('L, 9.525 mm, trapezoidal (ISO 5296)', 9.525e-3, neoprene(218), 3.8, 12),
  h: row('H, 12.7 mm, trapezoidal (ISO 5296)', 12.7e-3, neoprene(601), 5.9, 14),
  c2: row('2 mm, curved teeth', 2e-3, neoprene(111), 1.4, 14),
  c3: row('3M, 3 mm, curved teeth (ISO 13050)', 3e-3, neoprene(285), 2.6, 14),
  c5: row('5M, 5 mm, curved teeth (ISO 13050)', 5e-3, neoprene(454), 4.1, 16),
  c8: row('8M, 8 mm, curved teeth (ISO 13050)', 8e-3, neoprene(792), 6.5, 22),
  t2_5: metric('T2.5, 2.5 mm, trapezoidal (ISO 17396)', 2.5e-3, sixTeeth(10, 'memory', SCALED), 120, 1.5, 12),
  t5: metric('T5, 5 mm, trapezoidal (ISO 17396)', 5e-3, sixTeeth(24.7, 'sourced'), 360, 2.1, 10),
  t10: metric('T10, 10 mm, trapezoidal (ISO 17396)', 10e-3, sixTeeth(49.4, 'mixed', SCALED), 700, 4.5, 14),
  at5: metric('AT5, 5 mm, trapezoidal (ISO 17396)', 5e-3, sixTeeth(36.4, 'sourced'), 560, 3, 15),
} as const satisfies Record<string, Belt>;

export type BeltKey = keyof typeof belts;

export const beltKeys = Object.keys(belts) as readonly BeltKey[];

/** More teeth in mesh than this do not add to what a belt may pass on. */
export const countedTeeth = {
  value: 6,
  source: 'ISO 5295:1987, teeth-in-mesh factor reaches 1 at six (from memory); common practice',
} as const;

/** Service factor that peak torque over rated torque should leave. */
export const beltService = {
  harmless: 1.5,
  harm: 2,
  source: 'Handbook of timing belts: 1.5 to 2.0 for small pitches (SDP/SI, section 24)',
} as const;

/** Efficiency of a toothed-belt stage at a sound tension, with its usual range. */
export const beltEfficiency = {
  value: 0.95,
  low: 0.9,
  high: 0.98,
  source: 'Common practice, no source: 0.95 to 0.98 at full load, less at part load',
} as const;

/** Slack strand at the peak over effective tension: below, it can jump a tooth. */
export const leastSlack = {
  value: 0.1,
  source: 'Common practice, no source: the slack strand keeps a tenth of the effective tension',
} as const;

/** Share of the pitch that a pulley’s tooth keeps at its narrowest. */
export const pulleyTooth = {
  value: 0.3,
  source: 'Groove widths of ISO 5294 and ISO 13050, between 0.6 and 0.7 of the pitch (from memory)',
} as const;

/** Clearance of a belt’s tooth in its groove over the pitch. */
export const beltClearance = {
  least: { value: 0, source: 'Common practice, no source: none where the belt’s teeth are pressed home' },
  nominal: { value: 0.01, source: 'Common practice, no source: a hundredth of the pitch in each pulley' },
  greatest: {
    value: 0.04,
    source: 'Common practice, no source: trapezoidal teeth in worn or printed pulleys',
  },
} as const;

/** Shear strength of a pulley’s teeth over tensile strength. */
export const pulleyShear = {
  value: 0.5,
  source: 'Common practice, no source: shear half of tension',
} as const;

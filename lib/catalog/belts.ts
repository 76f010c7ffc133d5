// Toothed belts by profile and pitch: what their teeth and cords bear per width, mass, give, least pulley. All numbers in SI.
import { type BeltKey, beltLabels } from './belt-labels';
import type { Basis } from './value';

/** A force of a belt of reference width b_0, and the exponent with which it grows with the width. */
export interface BeltForce {
  readonly force: number;
  readonly width: number;
  readonly exponent: number;
  readonly source: string;
  readonly basis: Basis;
}

export interface SpeedShare {
  /** Up to this speed, 1/min. */
  readonly rpm: number;
  readonly share: number;
}

export interface Belt {
  readonly label: string;
  readonly pitch: number;
  /** What six teeth in mesh may pass on in continuous service. */
  readonly teeth: BeltForce;
  /** What the cords of an endless belt may carry in continuous service, pretension included. */
  readonly cords: BeltForce;
  /** What is left of the force of the teeth by speed of the smaller pulley; null where the table knows no fall. */
  readonly fall: readonly SpeedShare[] | null;
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

function row(key: BeltKey, pitch: number, force: BeltForce, mass: number, leastTeeth: number): Belt {
  return {
    label: beltLabels[key],
    pitch,
    teeth: force,
    cords: force,
    fall: null,
    mass,
    strain: glass,
    leastTeeth,
  };
}

function metric(
  key: BeltKey,
  pitch: number,
  teeth: BeltForce,
  cords: number,
  fall: readonly SpeedShare[],
  mass: number,
  leastTeeth: number,
): Belt {
  const cord = { force: cords, width: 10e-3, exponent: 1, source: POLYURETHANE, basis: teeth.basis };
  return { label: beltLabels[key], pitch, teeth, cords: cord, fall, mass, strain: steel, leastTeeth };
}

/** Six teeth of a polyurethane belt 10 mm wide at standstill, from the force of one tooth per width in N/cm. */
const sixTeeth = (perTooth: number, basis: Basis, source = POLYURETHANE): BeltForce => ({
  force: 6 * perTooth,
  width: 10e-3,
  exponent: 1,
  source,
  basis,
});

const shares = (perTooth: readonly number[]): readonly SpeedShare[] =>
  [0, 100, 500, 1000, 2000, 3000, 5000, 10_000].flatMap((rpm, i) => {
    const [still, at] = [perTooth[0], perTooth[i]];
    return still === undefined || at === undefined ? [] : [{ rpm, share: at / still }];
  });

/** Force of one tooth by speed, N/cm, as the published table prints it; pitch 10 is taken to fall as pitch 20 does. */
const fall = {
  t5: shares([24.7, 22.28, 18.45, 16.32, 14.03, 12.65, 10.88, 8.44]),
  t20: shares([104.5, 91.41, 69.96, 58.31, 45.94, 38.49, 28.93]),
  at5: shares([36.4, 34.24, 29.95, 26.49, 22.42, 19.85, 16.47, 11.72]),
} as const;

const SCALED = `${POLYURETHANE}, tooth of pitch 5 scaled with the pitch; that of pitch 20 agrees within 6 %`;

export const belts = {
  mxl: row('mxl', 2.032e-3, neoprene(80), 1.1, 10),
  xl: row('xl', 5.08e-3, neoprene(125), 2.3, 10),
  l: row('l', 9.525e-3, neoprene(218), 3.8, 12),
  h: row('h', 12.7e-3, neoprene(601), 5.9, 14),
  c2: row('c2', 2e-3, neoprene(111), 1.4, 14),
  c3: row('c3', 3e-3, neoprene(285), 2.6, 14),
  c5: row('c5', 5e-3, neoprene(454), 4.1, 16),
  c8: row('c8', 8e-3, neoprene(792), 6.5, 22),
  t2_5: metric('t2_5', 2.5e-3, sixTeeth(10, 'memory', SCALED), 120, fall.t5, 1.5, 12),
  t5: metric('t5', 5e-3, sixTeeth(24.7, 'sourced'), 360, fall.t5, 2.1, 10),
  t10: metric('t10', 10e-3, sixTeeth(49.4, 'mixed', SCALED), 700, fall.t20, 4.5, 14),
  at5: metric('at5', 5e-3, sixTeeth(36.4, 'sourced'), 560, fall.at5, 3, 15),
} as const satisfies Record<BeltKey, Belt>;

/** In the order of the table. */
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

/**
 * What is left of the force of a belt's teeth at a speed of its smaller pulley, 1/min: the row at or above it, to the safe
 * side. Undefined beyond the table.
 */
export function shareAtSpeed({ fall: rows }: Belt, rpm: number): number | undefined {
  if (rows === null) return 1;
  return rows.find((row) => rpm <= row.rpm)?.share;
}

export const beltFallSource = POLYURETHANE;

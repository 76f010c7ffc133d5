// How much swing a shaft lasts for its cycles, or the sentence that says what is missing.
import {
  enduranceLimit,
  enduranceOfShare,
  finiteLifeStrength,
  fitUnits,
  lifeExponent,
  lifeIntercept,
  scatterFactor,
  sizedStrength,
  sizeExponent,
  sizeFactor,
  strengthKept,
  stressCycles,
  surfaceFactor,
} from '@/lib/calc/shafts/fatigue/endurance';
import { finiteLife, reliabilityFactors, surfaceConstants } from '@/lib/catalog/shafts/fatigue';
import type { Traced } from '@/lib/quantity/traced';
import { type BookValue, booked } from '../../book';
import { cited, practice } from '../../sheet';
import type { Work } from '../../work';
import { lacking } from '../gears/service/materials';
import type { Line, NamedShaft } from './line';
import type { ShaftMaterial } from './material';
import { hardestCycles } from './spectrum';

/** A standard deviation of endurance, and how many lie below the mean for 99 shafts of 100. */
const reliable = reliabilityFactors.rows.find(({ reliability }) => reliability === 0.99)?.z ?? Number.NaN;

export const unit = {
  megapascal: practice(fitUnits.megapascal, 'unit of the fit, 1 MPa'),
  kilopound: practice(fitUnits.kilopoundPerSquareInch, 'unit of the fit, 1 kpsi'),
  millimetre: practice(fitUnits.millimetre, 'unit of the fit, 1 mm'),
} as const;
const bending = practice(1, 'bending, with torsion in the equivalent stress');
const warmth = practice(1, 'room temperature: metals lose little up to 80 °C');
const anySize = practice(1, 'size factor left open until the diameter is known');
const thick = practice(0.81, 'size factor of a shaft of 51 mm');
const full = practice(1, 'at the endurance limit the size factor counts in full');
const scatter = practice(reliable, `99 shafts of 100 last, ${reliabilityFactors.source}`);
const from = cited(finiteLife.from, 'cycles from which the line of finite life runs');
const to = cited(finiteLife.to, 'cycles to which it runs');

export interface Endurance {
  readonly S_ut: Traced;
  /** Swing that a shaft lasts for its cycles with a size factor of 1, and how much of that factor counts in it. */
  readonly S_f1: Traced;
  readonly e_k: Traced;
  /** The same at the shaft’s own diameter; null without one. */
  readonly S_f: Traced | null;
  /** Material values behind it, for range and caveat. */
  readonly values: readonly BookValue[];
  readonly lifeKnown: boolean;
}

export function enduranceOf(
  work: Work,
  line: Line,
  shaft: NamedShaft,
  m: ShaftMaterial,
  moves: Traced | null,
): Endurance | string {
  const { body } = m;
  if (m.kind !== 'metal') return 'Fatigue of a printed or plastic shaft is not assessed: no table gives it.';
  const { tensile } = body;
  if (tensile === undefined) return lacking(body, 'tensile_z');
  if (shaft.surface === null) return 'Enter how the surface of the shaft is made.';
  const { sheet } = work;
  const { at } = line;
  const S_ut = booked(tensile);
  const long = body.property('fatigue_strength_5e8');
  const share = m.isSteel ? body.property('fatigue_fraction_1e6') : undefined;
  const source = long ?? share;
  if (source === undefined) return lacking(body, m.isSteel ? 'fatigue_fraction_1e6' : 'fatigue_strength_5e8');
  const S_e0 =
    long === undefined
      ? sheet.work('shafts', at, enduranceOfShare, { f_N: booked(source), S_ut })
      : booked(long);
  const { a, b } = surfaceConstants[shaft.surface];
  const words = `${surfaceConstants[shaft.surface].label.toLowerCase()}, ${surfaceConstants.source}`;
  const surface = { a_s: practice(a, words), b_s: practice(b, words), S_ut, S_1: unit.megapascal };
  const k_a = sheet.work('shafts', at, surfaceFactor, surface);
  const k_e = sheet.work('shafts', at, scatterFactor, { z_a: scatter });
  const limitAt = (k_b: Traced, as: string) =>
    sheet.work('shafts', at, enduranceLimit, { k_a, k_c: bending, k_d: warmth, k_e, S_e0, k_b }, as);
  const S_e1 = limitAt(anySize, 'S_e1');
  // What is not steel keeps falling with cycles; the table’s value for the longest life stands for all.
  const { S_f1, e_k } =
    m.isSteel && moves !== null
      ? finite(work, line, { S_ut, S_e1, moves, least: () => limitAt(thick, 'S_e.thick') })
      : { S_f1: S_e1, e_k: full };
  const shared = { S_ut, S_f1, e_k, values: [tensile, source], lifeKnown: moves !== null };
  if (shaft.diameter === null) return { ...shared, S_f: null };
  const k_b = sheet.work('shafts', at, sizeFactor, { d: shaft.diameter, d_1: unit.millimetre });
  return { S_f: sheet.work('shafts', at, sizedStrength, { S_f1, k_b, e_k }), ...shared };
}

interface Finite {
  readonly S_ut: Traced;
  readonly S_e1: Traced;
  readonly moves: Traced;
  /** Endurance of a thick shaft: the life line through it is the steepest, and counts small loads most. */
  least(): Traced;
}

/** Few cycles leave more: the line of finite life between a thousand and a million. */
function finite(work: Work, line: Line, { S_ut, S_e1: S_e, moves, least }: Finite) {
  const { sheet } = work;
  const { at } = line;
  // A pin stands still: its bending swings with the moves alone.
  const all =
    line.shaft.kind === 'pin'
      ? moves
      : sheet.work('shafts', at, stressCycles, {
          N_moves: moves,
          phi_move: work.design.duty.moveAngle,
          i_s: line.turns,
        });
  const f_k = sheet.work('shafts', at, strengthKept, { S_ut, S_1: unit.kilopound });
  const steepest = () => sheet.work('shafts', at, lifeExponent, { f_k, S_ut, S_e: least() }, 'b_N.thick');
  const N = hardestCycles(work, at, all, steepest);
  const through = { f_k, S_ut, S_e };
  const a_N = sheet.work('shafts', at, lifeIntercept, through);
  const b_N = sheet.work('shafts', at, lifeExponent, through);
  const ends = { N, N_low: from, N_high: to };
  return {
    S_f1: sheet.work('shafts', at, finiteLifeStrength, { a_N, b_N, ...ends }, 'S_f1'),
    e_k: sheet.work('shafts', at, sizeExponent, ends),
  };
}

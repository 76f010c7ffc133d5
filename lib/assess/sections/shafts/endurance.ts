// How much swing a shaft lasts for its cycles, or the sentence that says what is missing.
import {
  enduranceLimit,
  enduranceOfShare,
  finiteLifeStrength,
  fitUnits,
  lifeExponent,
  lifeIntercept,
  scatterFactor,
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

/** A standard deviation of endurance, and how many lie below the mean for 99 shafts of 100. */
const reliable = reliabilityFactors.rows.find(({ reliability }) => reliability === 0.99)?.z ?? Number.NaN;

export const unit = {
  megapascal: practice(fitUnits.megapascal, 'unit of the fit, 1 MPa'),
  kilopound: practice(fitUnits.kilopoundPerSquareInch, 'unit of the fit, 1 kpsi'),
  millimetre: practice(fitUnits.millimetre, 'unit of the fit, 1 mm'),
} as const;
const bending = practice(1, 'bending, with torsion in the equivalent stress');
const warmth = practice(1, 'room temperature: metals lose little up to 80 °C');
const anySize = practice(1, 'size factor left open: it belongs to the diameter that is sought');
const scatter = practice(reliable, `99 shafts of 100 last, ${reliabilityFactors.source}`);
const from = cited(finiteLife.from, 'cycles from which the line of finite life runs');
const to = cited(finiteLife.to, 'cycles to which it runs');

export interface Endurance {
  readonly S_ut: Traced;
  /** Endurance with a size factor of 1, for the diameter that is sought. */
  readonly S_e1: Traced;
  /** Swing that the shaft lasts for its cycles; null without a diameter. */
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
  const limit = { k_a, k_c: bending, k_d: warmth, k_e, S_e0 };
  const S_e1 = sheet.work('shafts', at, enduranceLimit, { ...limit, k_b: anySize }, 'S_e1');
  const shared = { S_ut, S_e1, values: [tensile, source], lifeKnown: moves !== null };
  if (shaft.diameter === null) return { ...shared, S_f: null };
  const k_b = sheet.work('shafts', at, sizeFactor, { d: shaft.diameter, d_1: unit.millimetre });
  const S_e = sheet.work('shafts', at, enduranceLimit, { ...limit, k_b });
  // What is not steel keeps falling with cycles; the table’s value for the longest life stands for all.
  if (!m.isSteel || moves === null) return { ...shared, S_f: S_e };
  return { ...shared, S_f: finite(work, line, S_ut, S_e, moves) };
}

/** Few cycles leave more: the line of finite life between a thousand and a million. */
function finite(work: Work, line: Line, S_ut: Traced, S_e: Traced, moves: Traced): Traced {
  const { sheet } = work;
  const { at } = line;
  const N = sheet.work('shafts', at, stressCycles, {
    N_moves: moves,
    phi_move: work.design.duty.moveAngle,
    i_s: line.turns,
  });
  const f_k = sheet.work('shafts', at, strengthKept, { S_ut, S_1: unit.kilopound });
  const through = { f_k, S_ut, S_e };
  const a_N = sheet.work('shafts', at, lifeIntercept, through);
  const b_N = sheet.work('shafts', at, lifeExponent, through);
  return sheet.work('shafts', at, finiteLifeStrength, { a_N, b_N, N, N_low: from, N_high: to });
}

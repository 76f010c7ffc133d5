// The notch of a shaft: what it does to one overload, and how much of it fatigue feels.
import { fitUnits } from '@/lib/calc/shafts/fatigue/endurance';
import {
  fatigueNotchFactor,
  notchLengthBending,
  notchLengthTorsion,
  notchRadius,
  notchSensitivity,
  shoulderBendingBlunt,
  shoulderBendingSharp,
  shoulderHeight,
  shoulderTorsion,
} from '@/lib/calc/shafts/fatigue/notch';
import { notchRows } from '@/lib/catalog/shafts/notches';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import type { Work } from '../../work';
import type { NamedShaft } from './line';

const smooth = practice(1, 'no notch');
const whole = practice(1, 'the notch is felt whole, on the safe side');
const kilopound = practice(fitUnits.kilopoundPerSquareInch, 'unit of the fit, 1 kpsi');
const inch = practice(fitUnits.inch, 'unit of the fit, 1 in');

export interface StressFactors {
  readonly bending: Traced;
  readonly torsion: Traced;
}

export interface Notch {
  readonly stress: StressFactors;
  /** On the nominal stress of one overload, for the section that the notch takes. */
  readonly section: Traced;
  /** Radius at its bottom, m; null where fatigue is taken to feel it whole. */
  readonly radius: Traced | null;
}

const none: Notch = { stress: { bending: smooth, torsion: smooth }, section: smooth, radius: null };

/** The notch by what is entered, or what to enter. A keyseat’s radius needs the diameter; without one it is felt whole. */
export function notchOf(work: Work, at: string, shaft: NamedShaft): Notch | string {
  const { notch, diameter, fillet } = shaft;
  if (notch === null) return 'Say which notch the shaft has near its most loaded place.';
  if (notch === 'none') return none;
  if (notch === 'shoulder') return shoulderOf(work, at, shaft);
  const row = notchRows[notch];
  const value = (number: number, what: string) =>
    practice(number, `${what} of a ${row.label}, ${row.source}`);
  const radius =
    fillet ??
    (row.radius === null || diameter === null
      ? null
      : work.sheet.work('shafts', at, notchRadius, {
          s_n: value(row.radius, 'radius over diameter'),
          d: diameter,
        }));
  return {
    stress: {
      bending: value(row.bending, 'stress factor in bending'),
      torsion: value(row.torsion, 'stress factor in torsion'),
    },
    section: value(row.section, 'stress of the section left'),
    // A pressed hub has no radius: its factors are those of fatigue already.
    radius: notch === 'press' ? null : radius,
  };
}

function shoulderOf(work: Work, at: string, shaft: NamedShaft): Notch | string {
  const { diameter: d, shoulderDiameter: D, fillet: r } = shaft;
  if (d === null) return 'Enter the diameter of the shaft.';
  if (D === null) return 'Enter the diameter beyond the shoulder.';
  if (r === null) return 'Enter the radius of the shoulder’s fillet.';
  if (D.value <= d.value) return 'The diameter beyond the shoulder must be more than that of the shaft.';
  const { sheet } = work;
  const h = sheet.work('shafts', at, shoulderHeight, { D, d });
  const blunt = h.value / r.value;
  if (blunt < 0.1 || blunt > 20)
    return 'No stress factor is known for this fillet: its radius must lie between a twentieth of the shoulder’s height and ten times it.';
  const g = { h, r, D };
  const bending = sheet.work('shafts', at, blunt <= 2 ? shoulderBendingBlunt : shoulderBendingSharp, g);
  // Outside the range of the torsion fit bending stands for it: a shoulder raises it more.
  const torsion = blunt >= 0.25 && blunt <= 4 ? sheet.work('shafts', at, shoulderTorsion, g) : bending;
  return { stress: { bending, torsion }, section: smooth, radius: r };
}

/** How much of the notch fatigue feels: by its radius in steel, whole in other materials. */
export function fatigueFactors(
  work: Work,
  at: string,
  { stress, radius }: Notch,
  S_ut: Traced,
  isSteel: boolean,
): StressFactors {
  const { sheet } = work;
  const felt = (formula: typeof notchLengthBending, symbol: string) => {
    if (radius === null || !isSteel) return whole;
    const a_n = sheet.work('shafts', at, formula, { S_ut, S_1: kilopound, l_1: inch }, `a_n.${symbol}`);
    return sheet.work('shafts', at, notchSensitivity, { a_n, r: radius }, `q.${symbol}`);
  };
  const factor = (K_t: Traced, q: Traced, symbol: string) =>
    K_t === smooth ? smooth : sheet.work('shafts', at, fatigueNotchFactor, { q, K_t }, symbol);
  return {
    bending: factor(stress.bending, felt(notchLengthBending, 'bending'), 'K_f'),
    torsion: factor(stress.torsion, felt(notchLengthTorsion, 'torsion'), 'K_fs'),
  };
}

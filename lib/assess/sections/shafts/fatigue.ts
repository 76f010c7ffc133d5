// Whether a shaft lasts its life: swing and mean at its worst station with the notch, by Goodman.
import { goodmanStress, halfSwing, notchedStress } from '@/lib/calc/shafts/fatigue/criteria';
import { leastDiameterGoodman } from '@/lib/calc/shafts/fatigue/least-diameter';
import type { Traced } from '@/lib/quantity/traced';
import { requiredShaftFatigue } from '../../required';
import { practice } from '../../sheet';
import { caveatOf, scatterOf } from '../gears/service/materials';
import { enduranceOf, unit } from './endurance';
import { type Loaded, severity, untwisted } from './loaded';
import { fatigueFactors } from './notch';
import { type Hardest, hardestOf, inHardest } from './spectrum';
import { type StressCall, type StressWork, triedCaveat } from './stress';

const noMean = practice(0, 'it swings about nothing');

export function fatigueOf(call: StressCall & { readonly moves: Traced | null }): StressWork | string {
  const { work, line, shaft, stations, material, notch, moves } = call;
  const endurance = enduranceOf(work, line, shaft, material, moves);
  if (typeof endurance === 'string') return endurance;
  const { S_ut, S_f1, e_k, S_f } = endurance;
  const { bending: K_f, torsion: K_fs } = fatigueFactors(work, line.at, notch, S_ut, material.isSteel);
  const hardest = hardestOf(work);
  const shares = sharesOf(call, hardest);
  const worst = stations.worst((M, T) => {
    const part = (m: number, t: number) => severity(K_f.value * M * m, K_fs.value * T * t);
    return part(shares.M_a, shares.T_a) / S_f1.value + part(shares.M_m, shares.T_m) / S_ut.value;
  });
  const swung = swingsOf(call, inHardest(work, line.at, worst, hardest.torque), shares);
  const { M_a, T_a, M_m, T_m } = swung;
  const { diameter: d } = shaft;
  const stress = (M_b: Traced, T: Traced, as: string, at: Traced) =>
    work.sheet.work('shafts', line.at, notchedStress, { K_f, M_b, K_fs, T, d: at }, as);
  const demandOf = (at: Traced, lasts: Traced) =>
    work.sheet.work('shafts', line.at, goodmanStress, {
      sigma_a: stress(M_a, T_a, 'sigma_a', at),
      sigma_m: stress(M_m, T_m, 'sigma_m', at),
      S_f: lasts,
      S_ut,
    });
  const required = requiredShaftFatigue(work.document.duty.consequence);
  const forEver = endurance.lifeKnown ? null : 'No life is entered: it is held to last for ever.';
  const ranges = endurance.values.map((v) => ({ value: v.si, low: v.siLow, high: v.siHigh }));
  return {
    required,
    demand: d === null || S_f === null ? null : demandOf(d, S_f),
    capacity: S_f,
    caveat: caveatOf(
      endurance.values,
      [forEver, hardest.caveat, triedCaveat(line)].filter(Boolean).join(' '),
    ),
    at: hardest.torque,
    scatter: S_f === null ? null : scatterOf(S_f.value, ranges),
    leastDiameter: work.sheet.work(
      'shafts',
      line.at,
      leastDiameterGoodman,
      {
        n: practice(required.factor, required.from),
        K_f,
        K_fs,
        M_a: swung.M_a,
        M_m: swung.M_m,
        T_a: swung.T_a,
        T_m: swung.T_m,
        S_f1,
        e_k,
        S_ut,
        d_1: unit.millimetre,
      },
      'd_f',
    ),
  };
}

/** Shares of moment and torque that swing and that stay. */
interface Shares {
  readonly M_a: number;
  readonly M_m: number;
  readonly T_a: number;
  readonly T_m: number;
}

/**
 * Bending of a turning shaft swings fully with every turn, that of a pin with every move. Torque comes and goes with
 * every move, and a drive or a load that reverses turns it round.
 */
function sharesOf({ shaft }: StressCall, { reverses }: Hardest): Shares {
  const [a, m] = reverses ? [1, 0] : [0.5, 0.5];
  return shaft.kind === 'turning' ? { M_a: 1, M_m: 0, T_a: a, T_m: m } : { M_a: a, M_m: m, T_a: a, T_m: m };
}

function swingsOf({ work, line }: StressCall, { M_b, T }: Loaded, shares: Shares) {
  const split = (M: Traced, share: number, as: string) => {
    if (share === 1 || M === untwisted) return { swing: M, mean: noMean };
    const half = work.sheet.work('shafts', line.at, halfSwing, { M }, as);
    return { swing: half, mean: half };
  };
  const moment = split(M_b, shares.M_a, 'M_half');
  const torque = split(T, shares.T_a, 'T_half');
  return { M_a: moment.swing, M_m: moment.mean, T_a: torque.swing, T_m: torque.mean };
}

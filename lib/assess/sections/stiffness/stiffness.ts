// Play and give of the whole train at its output, and the resonance that follows.

import {
  freeResonance,
  giveShare,
  lockedResonance,
  stiffnessInSeries,
  windUp,
  windUpEnergy,
} from '@/lib/calc/gears/backlash/wind-up';
import type { Traced } from '@/lib/quantity/traced';
import type { UnitKey } from '@/lib/quantity/units';
import { lowered } from '../../words';
import { addFigure, type TrainWork, type Work } from '../../work';
import { play } from './play';
import { armSpring, type Spring, springsOf } from './springs';

/** What the strike needs of the train. */
export interface StiffnessWork {
  /** Torsional stiffness from the rotor to the hub of the arm at the output, N m/rad, or why it is not known. */
  readonly atOutput: Traced | string;
  /** The same of those parts alone that are known: the others taken as rigid. Null when none is known or gives. */
  readonly known: Traced | null;
  /** The parts taken as rigid, in words. */
  readonly leftOut: readonly string[];
}

export function stiffnessSection(work: Work, train: TrainWork): StiffnessWork {
  play(work, train);
  const springs = springsOf(work, train);
  const found = inSeries(work, springs, 'stiffness');
  figures(work, found, inSeries(work, springs, 'warm').atOutput);
  shares(work, springs, found.known);
  const arm = armSpring(work);
  resonances(work, train, arm === null ? found : withArm(work, found, arm));
  return found;
}

function inSeries(work: Work, springs: readonly Spring[], which: 'stiffness' | 'warm'): StiffnessWork {
  let known: Traced | null = null;
  const leftOut: string[] = [];
  let why: string | null = null;
  for (const { at, label, [which]: k } of springs) {
    if (k === null) continue;
    if (typeof k === 'string') {
      leftOut.push(lowered(label));
      why ??= `${label}: ${lowered(k)}`;
      continue;
    }
    known =
      known === null
        ? k
        : work.sheet.work(
            'stiffness',
            at,
            stiffnessInSeries,
            { k_before: known, k_out: k },
            which === 'warm' ? 'k_sum.warm' : 'k_sum',
          );
  }
  return { known, leftOut, atOutput: why ?? known ?? 'Nothing in the train gives.' };
}

function withArm(work: Work, train: StiffnessWork, arm: Omit<Spring, 'warm'>): StiffnessWork {
  if (typeof arm.stiffness === 'string') return { ...train, atOutput: arm.stiffness };
  if (typeof train.atOutput === 'string' || arm.stiffness === null) return train;
  const k = work.sheet.work('stiffness', 'output', stiffnessInSeries, {
    k_before: train.atOutput,
    k_out: arm.stiffness,
  });
  return { ...train, atOutput: k };
}

const stiffer = 'at 23 °C, hubs and bearings taken as rigid';

function figures(work: Work, { atOutput, known, leftOut }: StiffnessWork, warm: Traced | string): void {
  const { peakTorque, holdTorque } = work.design.duty;
  const k_sum = typeof atOutput === 'string' ? null : atOutput;
  const missing = typeof atOutput === 'string' ? atOutput : null;
  figure(
    work,
    'train.stiffness',
    `Stiffness of the train at its output, ${stiffer}`,
    'k',
    'N m/rad',
    k_sum,
    missing,
    'more',
  );
  if (k_sum === null)
    figure(
      work,
      'train.stiffnessBound',
      `Stiffness of the train at its output, ${leftOut.join(', ')} taken as rigid too: an upper bound`,
      'k',
      'N m/rad',
      known,
      missing,
      'more',
    );
  const give = (T: Traced, as: string) =>
    k_sum === null ? null : work.sheet.work('stiffness', 'train', windUp, { T, k_sum }, as);
  const atHold = give(holdTorque, 'phi_T.hold');
  figure(
    work,
    'train.windUpHold',
    'Wind-up at the output under the holding torque',
    'φ_T',
    'deg',
    atHold,
    missing,
  );
  const atPeak = give(peakTorque, 'phi_T.peak');
  figure(
    work,
    'train.windUpPeak',
    'Wind-up at the output under the peak torque',
    'φ_T',
    'deg',
    atPeak,
    missing,
  );
  const energy =
    k_sum === null ? null : work.sheet.work('stiffness', 'train', windUpEnergy, { T: peakTorque, k_sum });
  figure(
    work,
    'train.windUpEnergy',
    'Energy in the train wound up by the peak torque',
    'W_T',
    'J',
    energy,
    missing,
  );
  const k_warm = typeof warm === 'string' ? null : warm;
  figure(
    work,
    'train.windUpPeakWarm',
    'Wind-up at the output under the peak torque, in the warmth of the case',
    'φ_T',
    'deg',
    k_warm === null
      ? null
      : work.sheet.work('stiffness', 'train', windUp, { T: peakTorque, k_sum: k_warm }, 'phi_T.warm'),
    typeof warm === 'string' ? warm : null,
  );
}

/** What each part adds to the give, of all that is known. */
function shares(work: Work, springs: readonly Spring[], known: Traced | null): void {
  for (const { at, name, label, stiffness: k } of springs) {
    if (k === null) continue;
    const own = typeof k === 'string' ? null : k;
    figure(
      work,
      `${at}.${name}`,
      `${label}, share in the give of what is known`,
      's_k',
      '%',
      own === null || known === null
        ? null
        : work.sheet.work('stiffness', at, giveShare, { k_sum: known, k_part: own }),
      typeof k === 'string' ? k : null,
    );
  }
}

function resonances(work: Work, train: TrainWork, { atOutput }: StiffnessWork): void {
  const k_sum = typeof atOutput === 'string' ? null : atOutput;
  const missing = typeof atOutput === 'string' ? atOutput : null;
  const J_L = train.outputInertia;
  const J_M = work.design.motor.rotorInertia;
  const idle = 'Nothing heavy hangs on the output.';
  const heavy = J_L.value > 0;
  figure(
    work,
    'train.resonanceLocked',
    'First torsional resonance of the load, rotor held by the drive',
    'f_1',
    'Hz',
    k_sum === null || !heavy ? null : work.sheet.work('stiffness', 'train', lockedResonance, { k_sum, J_L }),
    missing ?? (heavy ? null : idle),
    'more',
  );
  figure(
    work,
    'train.resonanceFree',
    'First torsional resonance of load against rotor, drive off',
    'f_1',
    'Hz',
    k_sum === null || J_M === null || J_M.value <= 0 || !heavy
      ? null
      : work.sheet.work('stiffness', 'train', freeResonance, { k_sum, J_L, J_M, i: train.ratio }),
    missing ?? (heavy ? 'The rotor’s inertia is not entered.' : idle),
    'more',
  );
}

function figure(
  work: Work,
  key: string,
  label: string,
  symbol: string,
  unit: UnitKey,
  value: Traced | null,
  missing: string | null,
  better: 'less' | 'more' = 'less',
): void {
  addFigure(work, { key, section: 'stiffness', label, symbol, unit, value, missing, better });
}

// The load spectrum of the duty as a shaft sees it: its hardest load, and how many cycles of that do the same damage.
import { equivalentCycles } from '@/lib/calc/gears/service/spectrum';
import { damageExponent, loadAtTorque, torqueSeverity } from '@/lib/calc/shafts/fatigue/endurance';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import type { Work } from '../../work';
import { type LoadStep, spectrumOf } from '../gears/service/spectrum';
import { type Loaded, untwisted } from './loaded';

const none = practice(0, 'before the first load');

export interface Hardest {
  /** Torque at the output, N m. */
  readonly torque: Traced;
  /** Whether any load of the spectrum turns the torque round. */
  readonly reverses: boolean;
  readonly caveat: string | null;
}

export function hardestOf(work: Work): Hardest {
  const { steps, caveat } = spectrumOf(work);
  return {
    torque: hardestIn(steps),
    reverses: steps.some(({ bothWays }) => bothWays),
    caveat,
  };
}

function hardestIn(steps: readonly LoadStep[]): Traced {
  return steps.map(({ torque }) => torque).reduce((hard, own) => (own.value > hard.value ? own : hard));
}

/** Moment and torque in the hardest load; those of the peak where that is it. */
export function inHardest(work: Work, at: string, { M_b, T }: Loaded, torque: Traced): Loaded {
  const { peakTorque } = work.design.duty;
  if (torque.value === peakTorque.value) return { M_b, T };
  const scaled = (M: Traced, as: string) =>
    work.sheet.work('shafts', at, loadAtTorque, { M, T_h: torque, T_peak: peakTorque }, as);
  return { M_b: scaled(M_b, 'M_h'), T: T === untwisted ? T : scaled(T, 'T_h') };
}

/** Cycles of the hardest load that do the damage of all `N` cycles, on a life line with the exponent b_N. */
export function hardestCycles(work: Work, at: string, N: Traced, b_N: () => Traced): Traced {
  const { steps } = spectrumOf(work);
  const [only, ...more] = steps;
  if (only?.share.value === 1 && more.length === 0) return N;
  const { sheet } = work;
  const p = sheet.work('shafts', at, damageExponent, { b_N: b_N() });
  const T_h = hardestIn(steps);
  return steps.reduce<Traced>((N_before, { id, share: s, torque }) => {
    const tau = sheet.work('shafts', at, torqueSeverity, { T_i: torque, T_h }, `tau.${id}`);
    return sheet.work('shafts', at, equivalentCycles, { N_before, s, N_L: N, tau, p }, `N_eq.${id}`);
  }, none);
}

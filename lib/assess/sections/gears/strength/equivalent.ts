// A load spectrum brought to one load: the hardest step of it, and how many cycles of that step do the same damage.
import { equivalentCycles, relativeSeverity } from '@/lib/calc/gears/service/spectrum';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../../sheet';
import type { Work } from '../../../work';
import type { LoadStep } from '../service/spectrum';

/** A step with its stress and what its direction leaves of the strength. */
export interface Weighed extends LoadStep {
  readonly sigma: Traced;
  readonly Y_M: Traced;
}

export interface Equivalent {
  readonly hardest: Weighed;
  readonly cycles: Traced;
}

const none = practice(0, 'before the first load');

/** N_L cycles of the steps on a life line of exponent p on stress. `as` tells the lines of one gear apart. */
export function equivalentOf(
  work: Work,
  at: string,
  as: 'root' | 'flank',
  steps: readonly Weighed[],
  N_L: Traced,
  p: Traced,
): Equivalent {
  const hardest = steps.reduce((hard, step) =>
    step.sigma.value / step.Y_M.value > hard.sigma.value / hard.Y_M.value ? step : hard,
  );
  let cycles = none;
  for (const { id, share, sigma, Y_M } of steps) {
    const tau = work.sheet.work(
      'gears',
      at,
      relativeSeverity,
      { sigma, Y_M, sigma_w: hardest.sigma, Y_Mw: hardest.Y_M },
      `tau.${as}.${id}`,
    );
    cycles = work.sheet.work(
      'gears',
      at,
      equivalentCycles,
      { N_before: cycles, s: share, N_L, tau, p },
      `N_eq.${as}.${id}`,
    );
  }
  return { hardest, cycles };
}

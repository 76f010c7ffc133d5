// A load spectrum brought to one load: the hardest step of it, and how many cycles of that step do the same damage.
import { equivalentCycles, equivalentTorque, relativeSeverity } from '@/lib/calc/gears/service/spectrum';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../../sheet';
import type { Work } from '../../../work';
import type { LoadStep, Spectrum } from '../service/spectrum';

/** A step with what its direction leaves of the strength. */
export interface Weighed extends LoadStep {
  readonly Y_M: Traced;
}

export interface Equivalent {
  readonly steps: readonly Weighed[];
  readonly hardest: Weighed;
  readonly cycles: Traced;
  /** Torque at the output that, in every move, would do the same. */
  readonly torque: Traced;
}

const none = practice(0, 'before the first load');

/**
 * N_L cycles of the spectrum on a life line of exponent p on torque. `as` tells the lines of one gear apart; `direction`
 * gives what a step leaves of the strength.
 */
export function equivalentOf(
  work: Work,
  at: string,
  as: 'root' | 'flank',
  spectrum: Spectrum,
  N_L: Traced,
  p: Traced,
  direction: (step: LoadStep) => Traced,
): Equivalent {
  const steps = spectrum.steps.map((step) => ({ ...step, Y_M: direction(step) }));
  const hardest = steps.reduce((hard, step) =>
    step.torque.value / step.Y_M.value > hard.torque.value / hard.Y_M.value ? step : hard,
  );
  let cycles = none;
  for (const { id, share, torque, Y_M } of steps) {
    const tau = work.sheet.work(
      'gears',
      at,
      relativeSeverity,
      { T: torque, Y_M, T_w: hardest.torque, Y_Mw: hardest.Y_M },
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
  const torque = work.sheet.work(
    'gears',
    at,
    equivalentTorque,
    { T_w: hardest.torque, N_eq: cycles, N_L, p },
    `T_eq.${as}`,
  );
  return { steps, hardest, cycles, torque };
}

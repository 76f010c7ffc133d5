// The torque axis of the ladder: from zero, so that lengths compare honestly, and broken where a few elements hold
// so much more than the rest that they would crush the part that matters.

import { scaleLinear } from 'd3-scale';
import type { Check } from '@/lib/assess/assessment';

export interface TorqueAxis {
  /** Highest torque drawn to scale, N m. */
  readonly top: number;
  readonly ticks: readonly number[];
  /** True when elements beyond `top` are drawn with a break sign. */
  readonly broken: boolean;
}

/** How much farther than what matters an element may hold before its line is broken. */
const reach = 4;

/** The far end of a check's line: its torque or the upper end of its scatter. */
export function farEnd(check: Check): number {
  return Math.max(check.holdsTo ?? 0, check.holdsUpTo ?? 0);
}

/** Chooses the axis. `assessed` rises in `holdsTo`; torques in N m. */
export function torqueAxis(
  assessed: readonly Check[],
  demanded: number,
  forced: number | null,
  count = 6,
): TorqueAxis {
  const weakest = assessed[0];
  const focus = Math.max(demanded, forced ?? 0, weakest === undefined ? 0 : farEnd(weakest));
  const near = assessed.map(farEnd).filter((end) => end <= focus * reach);
  const wanted = Math.max(focus, ...near) || 1;
  const scale = scaleLinear().domain([0, wanted]).nice(count);
  const top = scale.domain()[1] ?? wanted;
  return { top, ticks: scale.ticks(count), broken: assessed.some((c) => farEnd(c) > top) };
}

// The wanted angle at a time.
import type { Target } from './types';

/** rad at a time in s. */
export function targetAt(target: Target, time: number): number {
  switch (target.kind) {
    case 'hold':
      return target.angle;
    case 'step':
      return time < target.at ? target.from : target.to;
    case 'sine':
      return target.middle + target.amplitude * Math.sin(2 * Math.PI * target.frequency * time);
    case 'points':
      return between(target.times, target.angles, time);
  }
}

function between(times: readonly number[], angles: readonly number[], time: number): number {
  let before = Number.NEGATIVE_INFINITY;
  let angle = angles[0] ?? 0;
  for (let i = 0; i < times.length; i += 1) {
    const at = times[i] ?? 0;
    const there = angles[i] ?? angle;
    if (time < at)
      return Number.isFinite(before) ? angle + ((there - angle) * (time - before)) / (at - before) : there;
    before = at;
    angle = there;
  }
  return angle;
}

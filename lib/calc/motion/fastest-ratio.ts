// The ratio with which a move takes the least time, found by working the move over ratios.
import { leastMove, type MovedLoad } from './least-time';
import type { MotorMap } from './motor-map';

/** What stays as it is while the ratio changes; SI, at the output. */
export interface Geared extends Omit<MovedLoad, 'ratio' | 'inertia' | 'load'> {
  /** Without the rotor, kg m². */
  readonly loadInertia: number;
  readonly rotorInertia: number;
  /** N m that act through the whole move, 0 or more: once against it, and what is left of it once with it. */
  readonly against: number;
  readonly along: number;
}

/** Least time of a move made against the load and with it, the slower of both, s; null where one of them cannot be made. */
export function slowerTime(map: MotorMap, geared: Geared, ratio: number, angle: number): number | null {
  const inertia = geared.loadInertia + ratio ** 2 * geared.rotorInertia;
  const against = leastMove(map, { ...geared, ratio, inertia, load: geared.against }, angle);
  if (against === null || geared.against === 0) return against?.time ?? null;
  const along = leastMove(map, { ...geared, ratio, inertia, load: -geared.along }, angle);
  return along === null ? null : Math.max(against.time, along.time);
}

export interface RatioSearch {
  /** Least time over ratio, where the move can be made. */
  readonly course: readonly { readonly ratio: number; readonly time: number }[];
  readonly best: { readonly ratio: number; readonly time: number } | null;
  /** What the present ratio takes beyond the best one, as a share of the best time; null where either cannot be made. */
  readonly lost: number | null;
}

/** Each side of the present ratio the search goes so far. */
const reach = 6;
const golden = (Math.sqrt(5) - 1) / 2;

/** Works the move at ratios from a sixth to six times the present one and closes in on the fastest. */
export function fastestRatio(
  map: MotorMap,
  geared: Geared,
  present: number,
  angle: number,
  points: number,
): RatioSearch {
  const step = (2 * Math.log(reach)) / (points - 1);
  const at = (x: number) => slowerTime(map, geared, present * Math.exp(x), angle) ?? Number.POSITIVE_INFINITY;
  const tried = Array.from({ length: points }, (_, i) => {
    const x = i * step - Math.log(reach);
    return { x, time: at(x) };
  });
  const least = tried.reduce((a, b) => (b.time < a.time ? b : a));
  const course = tried
    .filter(({ time }) => Number.isFinite(time))
    .map(({ x, time }) => ({ ratio: present * Math.exp(x), time }));
  if (!Number.isFinite(least.time)) return { course, best: null, lost: null };
  const found = narrowed(at, least.x - step, least.x + step, 8);
  const best = found.time < least.time ? found : least;
  const now = slowerTime(map, geared, present, angle);
  return {
    course,
    best: { ratio: present * Math.exp(best.x), time: best.time },
    lost: now === null ? null : Math.max(0, now / best.time - 1),
  };
}

/** Golden-section search for the least value between two ends. */
function narrowed(
  at: (x: number) => number,
  from: number,
  to: number,
  steps: number,
): { readonly x: number; readonly time: number } {
  let [low, high] = [from, to];
  let left = { x: high - golden * (high - low), time: 0 };
  let right = { x: low + golden * (high - low), time: 0 };
  left = { ...left, time: at(left.x) };
  right = { ...right, time: at(right.x) };
  for (let k = 0; k < steps; k += 1) {
    if (left.time < right.time) {
      high = right.x;
      right = left;
      const x = high - golden * (high - low);
      left = { x, time: at(x) };
    } else {
      low = left.x;
      left = right;
      const x = low + golden * (high - low);
      right = { x, time: at(x) };
    }
  }
  return left.time < right.time ? left : right;
}

// The ratio with which a move takes the least time, found by working the move over ratios.
import { leastTime, type MovedLoad } from './least-time';
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
  const against = leastTime(map, movedAt(geared, ratio, geared.against), angle);
  if (against === null || geared.against === 0) return against;
  const along = leastTime(map, movedAt(geared, ratio, -geared.along), angle);
  return along === null ? null : Math.max(against, along);
}

/** Written out: spread, it would cost more than the move itself. */
function movedAt(g: Geared, ratio: number, load: number): MovedLoad {
  return {
    ratio,
    efficiency: g.efficiency,
    inertia: g.loadInertia + ratio ** 2 * g.rotorInertia,
    load,
    dryFriction: g.dryFriction,
    viscousFriction: g.viscousFriction,
  };
}

export interface RatioSearch {
  /** Least time over ratio, where the move can be made. */
  readonly course: readonly { readonly ratio: number; readonly time: number }[];
  readonly best: { readonly ratio: number; readonly time: number } | null;
  /** Least time with the present ratio, s; null where the move cannot be made. */
  readonly present: number | null;
  /** What the present ratio takes beyond the best one, as a share of the best time; null where either cannot be made. */
  readonly lost: number | null;
}

/** Each side of the present ratio the search goes so far. */
const reach = 6;

/** Works the move at ratios from a sixth to six times the present one and closes in on the fastest by parabolas. */
export function fastestRatio(
  map: MotorMap,
  geared: Geared,
  present: number,
  angle: number,
  points: number,
): RatioSearch {
  const step = (2 * Math.log(reach)) / (points - 1);
  const at = (x: number): Tried => ({
    x,
    time: slowerTime(map, geared, present * Math.exp(x), angle) ?? Number.POSITIVE_INFINITY,
  });
  const tried = Array.from({ length: points }, (_, i) => at(i * step - Math.log(reach)));
  let k = 0;
  for (let i = 1; i < points; i += 1) if ((tried[i]?.time ?? 0) < (tried[k]?.time ?? 0)) k = i;
  const [before, least, after] = [tried[k - 1], tried[k], tried[k + 1]];
  const course = tried
    .filter(({ time }) => Number.isFinite(time))
    .map(({ x, time }) => ({ ratio: present * Math.exp(x), time }));
  if (least === undefined || !Number.isFinite(least.time))
    return { course, best: null, present: null, lost: null };
  const best = before === undefined || after === undefined ? least : narrowed(at, before, least, after);
  const now = slowerTime(map, geared, present, angle);
  return {
    course,
    best: { ratio: present * Math.exp(best.x), time: best.time },
    present: now,
    lost: now === null ? null : Math.max(0, now / best.time - 1),
  };
}

interface Tried {
  readonly x: number;
  readonly time: number;
}

/** Closes in on the least between two points that lie higher: at the foot of a parabola through three, or in the wider gap. */
function narrowed(at: (x: number) => Tried, before: Tried, least: Tried, after: Tried): Tried {
  let [a, b, c] = [before, least, after];
  for (let k = 0; k < 4; k += 1) {
    const foot = footOf(a, b, c);
    const wide = c.x - b.x > b.x - a.x ? (b.x + c.x) / 2 : (a.x + b.x) / 2;
    // A foot at the middle point itself tells nothing new.
    const next = at(foot > a.x && foot < c.x && Math.abs(foot - b.x) > 1e-3 ? foot : wide);
    if (next.time < b.time) [a, b, c] = next.x < b.x ? [a, next, b] : [b, next, c];
    else [a, c] = next.x < b.x ? [next, c] : [a, next];
  }
  return b;
}

function footOf(a: Tried, b: Tried, c: Tried): number {
  const p = (b.x - a.x) * (b.time - c.time);
  const q = (b.x - c.x) * (b.time - a.time);
  return b.x - (0.5 * ((b.x - a.x) * p - (b.x - c.x) * q)) / (p - q);
}

// The move of least time under a torque that falls with speed: full driving torque, then full braking torque.
import type { MotorMap } from './motor-map';

/** What motor and drive move, SI, at the output. */
export interface MovedLoad {
  /** Motor turns per output turn. */
  readonly ratio: number;
  /** Of the train while the motor drives; while it brakes, what friction would help is left out. */
  readonly efficiency: number;
  /** All that moves, the rotor included, kg m². */
  readonly inertia: number;
  /** N m; above 0 it acts against the move, below 0 with it, from start to end. */
  readonly load: number;
  /** N m and N m s/rad, against any motion. */
  readonly dryFriction: number;
  readonly viscousFriction: number;
}

export interface LeastMove {
  /** s */
  readonly time: number;
  /** rad/s at the output */
  readonly peakSpeed: number;
  /** Speed over time, from rest to rest. */
  readonly course: readonly { readonly time: number; readonly speed: number }[];
}

/** What is kept of each piece for the course: its least speed, its change of speed and the rates with their slopes. */
interface Kept extends Both {
  readonly change: number;
}

/** Share of a speed that is only neared for ever that counts as reached. */
const nearly = 1 - 1e-9;

/**
 * Least time of a move of `angle` (rad) from rest to rest; null where the load cannot be started or not be stopped.
 * With a load that does not depend on place the move of least time drives fully up to one speed and brakes fully from
 * it (Pontryagin's principle), with a run at the greatest speed between where that is reached first. Between the speeds
 * of the map acceleration is a straight line over speed, for which time and angle are known in closed form.
 */
export function leastMove(map: MotorMap, moved: MovedLoad, angle: number): LeastMove | null {
  const kept: Kept[] = [];
  const time = leastTime(map, moved, angle, kept);
  if (time === null) return null;
  const last = kept.at(-1);
  const peakSpeed = last === undefined ? 0 : last.from + last.change;
  return { time, peakSpeed, course: courseOf(kept, time) };
}

function courseOf(kept: readonly Kept[], time: number): LeastMove['course'] {
  let rise = 0;
  let fall = time;
  const up = [{ time: 0, speed: 0 }];
  const down = [{ time, speed: 0 }];
  for (const { from, change, rises, b, falls, d } of kept) {
    for (const share of parts(timeOf(rises, b, change) / time))
      up.push({ time: rise + timeOf(rises, b, change * share), speed: from + change * share });
    for (const share of parts(timeOf(falls, d, change) / time))
      down.push({ time: fall - timeOf(falls, d, change * share), speed: from + change * share });
    rise += timeOf(rises, b, change);
    fall -= timeOf(falls, d, change);
  }
  // Without a run at the peak both ends meet there.
  if (fall - rise < 1e-9 * time) down.pop();
  return [...up, ...down.reverse()];
}

/** A piece that takes much of the time is bent: it is drawn in parts. */
function parts(share: number): readonly number[] {
  return share > 0.1 ? [0.3, 0.6, 0.8, 0.92, 1] : [1];
}

/** The time alone, s; `kept`, where given, takes what the course is made of. */
export function leastTime(map: MotorMap, moved: MovedLoad, angle: number, kept?: Kept[]): number | null {
  const { speeds, brakingAbove, brakingBelow } = map;
  const { ratio, inertia } = moved;
  let time = 0;
  let left = angle;
  let from = 0;
  let rises = gain(map, moved, 0, 0);
  for (let i = 1; i < speeds.length; i += 1) {
    const to = (speeds[i] ?? 0) / ratio;
    const width = to - from;
    const next = gain(map, moved, i, to);
    const held = moved.load + moved.dryFriction;
    const falls = (ratio * (brakingAbove[i - 1] ?? 0) + held + moved.viscousFriction * from) / inertia;
    const fallsAfter = (ratio * (brakingBelow[i] ?? 0) + held + moved.viscousFriction * to) / inertia;
    if (rises <= 0 || falls <= 0) break;
    // Slopes of both rates over speed.
    const b = (next - rises) / width;
    const d = (fallsAfter - falls) / width;
    let change = Math.min(reach(rises, b, width), reach(falls, d, width));
    let rise = 0;
    let fall = 0;
    let both = 0;
    for (let falling = 0; falling < 2; falling += 1) {
      const rate = falling === 0 ? rises : falls;
      const slope = falling === 0 ? b : d;
      const t = timeOf(rate, slope, change);
      both += angleOf(from, rate, slope, change, t);
      if (falling === 0) rise = t;
      else fall = t;
    }
    if (both > left) {
      change = meeting({ from, rises, b, falls, d }, change, left);
      rise = timeOf(rises, b, change);
      fall = timeOf(falls, d, change);
      both = left;
    }
    time += rise + fall;
    left -= both;
    kept?.push({ from, change, rises, b, falls, d });
    from += change;
    rises = next;
    if (change < width) break;
  }
  return from > 0 ? time + Math.max(0, left) / from : null;
}

/** Acceleration under full driving torque at a knot of the map, rad/s². */
function gain(map: MotorMap, m: MovedLoad, knot: number, speed: number): number {
  const driven = m.ratio * m.efficiency * (map.driving[knot] ?? 0);
  return (driven - m.load - m.dryFriction - m.viscousFriction * speed) / m.inertia;
}

/** How far speed may change at such a rate: the whole width, or nearly to where the rate is gone. */
function reach(rate: number, slope: number, width: number): number {
  return rate + slope * width > 0 ? width : nearly * (-rate / slope);
}

/** Time for a change of speed at a rate that begins at `rate` and bends by `slope`, s: ∫dω/a. */
function timeOf(rate: number, slope: number, change: number): number {
  const u = (slope * change) / rate;
  // Below the bound the logarithm loses its figures and the series does not.
  const share =
    Math.abs(u) < small ? 1 - u * (1 / 2 - u * (1 / 3 - u * (1 / 4 - u / 5))) : Math.log(1 + u) / u;
  return (change / rate) * share;
}

/** Angle over the same change in its time, rad, the speed beginning at `from`: ∫ω dω/a. */
function angleOf(from: number, rate: number, slope: number, change: number, time: number): number {
  const u = (slope * change) / rate;
  const rest =
    Math.abs(u) < small
      ? (change / rate) * (1 / 2 - u * (1 / 3 - u * (1 / 4 - u * (1 / 5 - u / 6))))
      : (change - rate * time) / (slope * change);
  return from * time + change * rest;
}

const small = 0.01;

/** A piece in which speed rises at one rate and falls at another, each a straight line over speed. */
interface Both {
  readonly from: number;
  readonly rises: number;
  readonly b: number;
  readonly falls: number;
  readonly d: number;
}

/** The change of speed after which rise and fall together cover an angle: Newton's steps, halved where they leave the piece. */
function meeting({ from, rises, b, falls, d }: Both, whole: number, angle: number): number {
  let low = 0;
  let high = whole;
  let change = whole / 2;
  for (let k = 0; k < 60; k += 1) {
    const risen = angleOf(from, rises, b, change, timeOf(rises, b, change));
    const over = risen + angleOf(from, falls, d, change, timeOf(falls, d, change)) - angle;
    if (over > 0) high = change;
    else low = change;
    const slope = (from + change) * (1 / (rises + b * change) + 1 / (falls + d * change));
    const next = change - over / slope;
    const kept = next > low && next < high ? next : (low + high) / 2;
    if (Math.abs(kept - change) <= 1e-11 * (from + whole)) return kept;
    change = kept;
  }
  return change;
}

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

/** Time and angle of one piece of speed. */
interface Piece {
  readonly time: number;
  readonly angle: number;
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
  const up: number[] = [];
  const down: number[] = [];
  const speeds: number[] = [0];
  let covered = 0;
  let reached = 0;
  for (let i = 0; i + 1 < map.speeds.length; i += 1) {
    const from = (map.speeds[i] ?? 0) / moved.ratio;
    const to = (map.speeds[i + 1] ?? 0) / moved.ratio;
    const rise = new Line(from, to, gain(map, moved, i, from), gain(map, moved, i + 1, to));
    const fall = new Line(
      from,
      to,
      loss(moved, map.brakingAbove[i] ?? 0, from),
      loss(moved, map.brakingBelow[i + 1] ?? 0, to),
    );
    if (rise.first <= 0 || fall.first <= 0) break;
    const end = Math.min(rise.end(), fall.end());
    const left = angle - covered;
    const speed = rise.angle(end) + fall.angle(end) < left ? end : meeting(rise, fall, from, end, left);
    up.push(rise.time(speed));
    down.push(fall.time(speed));
    speeds.push(speed);
    covered += rise.angle(speed) + fall.angle(speed);
    reached = speed;
    if (speed < to) break;
  }
  if (reached <= 0) return null;
  const run = Math.max(0, angle - covered) / reached;
  return courseOf(speeds, up, down, run);
}

function courseOf(
  speeds: readonly number[],
  up: readonly number[],
  down: readonly number[],
  run: number,
): LeastMove {
  let time = 0;
  const course = [{ time: 0, speed: 0 }];
  for (const [i, step] of up.entries()) {
    time += step;
    course.push({ time, speed: speeds[i + 1] ?? 0 });
  }
  const peakSpeed = course.at(-1)?.speed ?? 0;
  time += run;
  if (run > 0) course.push({ time, speed: peakSpeed });
  for (let i = down.length - 1; i >= 0; i -= 1) {
    time += down[i] ?? 0;
    course.push({ time, speed: speeds[i] ?? 0 });
  }
  return { time, peakSpeed, course };
}

/** Acceleration under full driving torque at a knot of the map, rad/s². */
function gain(map: MotorMap, m: MovedLoad, knot: number, speed: number): number {
  const driven = m.ratio * m.efficiency * (map.driving[knot] ?? 0);
  return (driven - m.load - m.dryFriction - m.viscousFriction * speed) / m.inertia;
}

/** Deceleration under a braking torque of the motor, rad/s². */
function loss(m: MovedLoad, torque: number, speed: number): number {
  return (m.ratio * torque + m.load + m.dryFriction + m.viscousFriction * speed) / m.inertia;
}

/** The speed up to which both pieces together cover an angle. */
function meeting(rise: Line, fall: Line, from: number, to: number, angle: number): number {
  let low = from;
  let high = to;
  for (let k = 0; k < 50 && high - low > 1e-12 * to; k += 1) {
    const middle = (low + high) / 2;
    if (rise.angle(middle) + fall.angle(middle) < angle) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** A change of speed whose rate is a straight line over speed. */
class Line {
  private readonly slope: number;
  constructor(
    readonly from: number,
    readonly to: number,
    /** rad/s² at `from`. */
    readonly first: number,
    private readonly last: number,
  ) {
    this.slope = (last - first) / (to - from);
  }

  /** The greatest speed it reaches: its own end, or nearly the speed at which the rate is gone. */
  end(): number {
    return this.last > 0 ? this.to : this.from + nearly * (-this.first / this.slope);
  }

  time(speed: number): number {
    return this.piece(speed).time;
  }

  angle(speed: number): number {
    return this.piece(speed).angle;
  }

  /** From `from` to `speed`. */
  private piece(speed: number): Piece {
    const change = speed - this.from;
    const rate = this.first + this.slope * change;
    const turn = rate - this.first;
    if (Math.abs(turn) < 0.05 * this.first) return this.flat(change);
    const time = Math.log(rate / this.first) / this.slope;
    // ∫ω dω/a with a = a₀ + b (ω − ω₀).
    return { time, angle: (change - (this.first - this.slope * this.from) * time) / this.slope };
  }

  /** Where the rate hardly changes, the logarithm loses its figures: Gauss's three points do not. */
  private flat(change: number): Piece {
    let time = 0;
    let angle = 0;
    for (const [place, weight] of gauss) {
      const x = change * place;
      const dt = (weight * change) / (this.first + this.slope * x);
      time += dt;
      angle += dt * (this.from + x);
    }
    return { time, angle };
  }
}

/** Places and weights of Gauss's rule with three points between 0 and 1. */
const gauss = [
  [(1 - Math.sqrt(0.6)) / 2, 5 / 18],
  [1 / 2, 8 / 18],
  [(1 + Math.sqrt(0.6)) / 2, 5 / 18],
] as const;

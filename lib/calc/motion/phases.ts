// The demanded move point by point: speed, acceleration and the torque asked, beside what motor and drive give there.
import type { MovedLoad } from './least-time';
import type { MotorMap } from './motor-map';
import type { MoveProfile } from './profiles';

/** One moment of a move at the output: speed in rad/s, acceleration in rad/s², time in s. */
export interface MovePoint {
  readonly time: number;
  readonly speed: number;
  readonly acceleration: number;
}

/** The moments of a move of peak speed (rad/s) and peak acceleration (rad/s²) over a time t (s). Source: kinematics. */
export function movePoints(
  profile: MoveProfile,
  { speed, acceleration, t }: { readonly speed: number; readonly acceleration: number; readonly t: number },
): readonly MovePoint[] {
  if (profile === 'cosine')
    return Array.from({ length: 25 }, (_, i) => {
      const angle = (Math.PI * i) / 24;
      return {
        time: (t * i) / 24,
        speed: speed * Math.sin(angle),
        acceleration: acceleration * Math.cos(angle),
      };
    });
  // Torque and what is given run straight enough between the ends of a ramp for eight steps.
  const ramp = profile === 'trapezoid' ? t / 3 : t / 2;
  const steps = Array.from({ length: 9 }, (_, i) => i / 8);
  const up = steps.map((s) => ({ time: ramp * s, speed: speed * s, acceleration }));
  const down = steps.map((s) => ({
    time: t - ramp * (1 - s),
    speed: speed * (1 - s),
    acceleration: -acceleration,
  }));
  if (profile === 'triangle') return [...up, ...down];
  const even = [ramp, t - ramp].map((time) => ({ time, speed, acceleration: 0 }));
  return [...up, ...even, ...down];
}

/** Torque that motor and drive must bring at the output, N m; below 0 they must brake. */
export function askedTorque(moved: MovedLoad, { speed, acceleration }: MovePoint): number {
  const friction = moved.dryFriction + moved.viscousFriction * speed;
  return moved.inertia * acceleration + moved.load + friction;
}

export interface WorstPoint {
  readonly speed: number;
  /** Asked and given there, N m, both without sign. */
  readonly asked: number;
  readonly given: number;
}

/** Where given over asked is least while driving and while braking; null where the move never drives or never brakes. */
export function worstPoints(
  map: MotorMap,
  moved: MovedLoad,
  points: readonly MovePoint[],
): { readonly driving: WorstPoint | null; readonly braking: WorstPoint | null } {
  let driving: WorstPoint | null = null;
  let braking: WorstPoint | null = null;
  for (const point of points) {
    const asked = askedTorque(moved, point);
    const { speed } = point;
    if (asked > 0) driving = worse(driving, { speed, asked, given: drivingAt(map, moved, speed) });
    if (asked < 0) braking = worse(braking, { speed, asked: -asked, given: brakingAt(map, moved, speed) });
  }
  return { driving, braking };
}

function worse(a: WorstPoint | null, b: WorstPoint): WorstPoint {
  return a === null || b.given * a.asked < a.given * b.asked ? b : a;
}

/** Driving torque at the output at a speed, N m; none beyond the map. */
export function drivingAt(map: MotorMap, moved: MovedLoad, speed: number): number {
  return moved.ratio * moved.efficiency * between(map, map.driving, map.driving, speed * moved.ratio);
}

/** Braking torque at the output at a speed, N m; none beyond the map. */
export function brakingAt(map: MotorMap, moved: MovedLoad, speed: number): number {
  return moved.ratio * between(map, map.brakingAbove, map.brakingBelow, speed * moved.ratio);
}

function between(
  { speeds }: MotorMap,
  starts: readonly number[],
  ends: readonly number[],
  speed: number,
): number {
  const next = speeds.findIndex((s, i) => i > 0 && s >= speed);
  if (next < 0) return 0;
  const from = speeds[next - 1] ?? 0;
  const share = (speed - from) / ((speeds[next] ?? 0) - from);
  return (starts[next - 1] ?? 0) * (1 - share) + (ends[next] ?? 0) * share;
}

// Whether a simulated output swings on without end, how far and how fast.
import type { Result } from './simulation/types';

export interface Swing {
  /** Half the swing of the last third, rad; 0 where none goes on. */
  readonly cycle: number;
  /** Hz; null where none goes on or it turns back too seldom to tell. */
  readonly frequency: number | null;
}

/** A swing that shrinks by less than this from one third of the run to the next goes on. */
const lasting = 0.7;

/**
 * A swing goes on that turns back at least twice in the second half, by more than `seen` (rad, half a swing) each time, and
 * does not die away from the middle third of the run to the last.
 */
export function swingThatGoesOn({ time, output }: Result, seen: number): Swing {
  const count = output.length;
  const third = Math.floor(count / 3);
  const last = halfSwing(output, count - third, count);
  if (last <= seen || last < lasting * halfSwing(output, third, count - third))
    return { cycle: 0, frequency: null };
  const turns = turningPoints(time, output, Math.floor(count / 2), 2 * seen);
  if (turns.length < 2) return { cycle: 0, frequency: null };
  const [first, end] = [turns[0] ?? 0, turns.at(-1) ?? 0];
  return { cycle: last, frequency: turns.length < 3 ? null : (turns.length - 1) / (2 * (end - first)) };
}

function halfSwing(output: Float64Array, from: number, to: number): number {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let i = from; i < to; i += 1) {
    const angle = output[i] ?? 0;
    low = Math.min(low, angle);
    high = Math.max(high, angle);
  }
  return (high - low) / 2;
}

/** When the output turned back after having moved by more than `least` (rad). */
function turningPoints(time: Float64Array, output: Float64Array, from: number, least: number): number[] {
  const turns: number[] = [];
  let way = 0;
  let extreme = output[from] ?? 0;
  let when = time[from] ?? 0;
  for (let i = from + 1; i < output.length; i += 1) {
    const angle = output[i] ?? 0;
    const on = way === 0 ? Math.abs(angle - extreme) : (angle - extreme) * way;
    if (way === 0) {
      if (on > least) [way, extreme, when] = [Math.sign(angle - extreme), angle, time[i] ?? 0];
    } else if (on >= 0) [extreme, when] = [angle, time[i] ?? 0];
    else if (-on > least) {
      turns.push(when);
      [way, extreme, when] = [-way, angle, time[i] ?? 0];
    }
  }
  return turns;
}

// What a simulated move comes to: rise, overshoot, settling, error at rest, swinging.
import type { Result } from './types';

export interface Metrics {
  /** From 10 % to 90 % of the way, s; null where it does not get there. */
  readonly rise: number | null;
  /** Beyond the wanted angle, share of the way; 0 for none. */
  readonly overshoot: number;
  /** From the start of the step until the output stays within the band, s; null where it does not in the time worked. */
  readonly settling: number | null;
  /** Mean of wanted less true angle over the last third, rad. */
  readonly restError: number;
  /** Half of the swing of the output over the last third, rad. */
  readonly swing: number;
  /** Of that swing, Hz, from its crossings of the mean; null where it crosses less than twice upwards. */
  readonly swingFrequency: number | null;
  /** N m. */
  readonly toothTorque: number;
  readonly current: number;
}

/**
 * Reads the answer to a step from `from` to `to` (rad) that came at `at` (s). The band of the settling time is a half width
 * in rad; 2 % of the way where left out. Times are found between the points kept by straight lines: keep enough of them.
 */
export function metricsOf(
  result: Result,
  step: { readonly at: number; readonly from: number; readonly to: number; readonly band?: number },
): Metrics {
  const { time, output } = result;
  const way = step.to - step.from;
  const band = step.band ?? 0.02 * Math.abs(way);
  const tenth = crossing(result, step.at, step.from + 0.1 * way, Math.sign(way));
  const most = crossing(result, step.at, step.from + 0.9 * way, Math.sign(way));
  let beyond = 0;
  let outside = -1;
  for (let i = 0; i < time.length; i += 1) {
    if ((time[i] ?? 0) < step.at) continue;
    const off = ((output[i] ?? 0) - step.to) * Math.sign(way);
    if (off > beyond) beyond = off;
    if (Math.abs(off) > band) outside = i;
  }
  return {
    rise: tenth === null || most === null ? null : most - tenth,
    overshoot: way === 0 ? 0 : beyond / Math.abs(way),
    settling: settled(result, outside, step.to, band, step.at),
    ...restOf(result),
    toothTorque: result.peaks.toothTorque,
    current: result.peaks.current,
  };
}

/** First time from `at` when the output passes a level on its way up (1) or down (−1). */
function crossing({ time, output }: Result, at: number, level: number, way: number): number | null {
  for (let i = 1; i < time.length; i += 1) {
    const now = time[i] ?? 0;
    if (now < at) continue;
    const after = ((output[i] ?? 0) - level) * way;
    if (after < 0) continue;
    const before = ((output[i - 1] ?? 0) - level) * way;
    const then = time[i - 1] ?? 0;
    return before >= 0 ? Math.max(then, at) : now - ((now - then) * after) / (after - before);
  }
  return null;
}

function settled(
  { time, output }: Result,
  outside: number,
  to: number,
  band: number,
  at: number,
): number | null {
  if (outside < 0) return 0;
  if (outside >= time.length - 1) return null;
  const before = Math.abs((output[outside] ?? 0) - to) - band;
  const after = Math.abs((output[outside + 1] ?? 0) - to) - band;
  const then = time[outside] ?? 0;
  return then + (((time[outside + 1] ?? 0) - then) * before) / (before - after) - at;
}

function restOf({ time, output, target }: Result): Pick<Metrics, 'restError' | 'swing' | 'swingFrequency'> {
  const first = Math.floor((2 * time.length) / 3);
  const count = time.length - first;
  let sum = 0;
  let off = 0;
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let i = first; i < time.length; i += 1) {
    const angle = output[i] ?? 0;
    sum += angle;
    off += (target[i] ?? 0) - angle;
    low = Math.min(low, angle);
    high = Math.max(high, angle);
  }
  const mean = sum / count;
  let crossings = 0;
  let begin = 0;
  let end = 0;
  for (let i = first + 1; i < time.length; i += 1) {
    const before = (output[i - 1] ?? 0) - mean;
    const after = (output[i] ?? 0) - mean;
    if (before >= 0 || after < 0) continue;
    const then = time[i - 1] ?? 0;
    const when = then + ((time[i] ?? 0) - then) * (before / (before - after));
    if (crossings === 0) begin = when;
    end = when;
    crossings += 1;
  }
  return {
    restError: off / count,
    swing: (high - low) / 2,
    swingFrequency: crossings < 2 ? null : (crossings - 1) / (end - begin),
  };
}

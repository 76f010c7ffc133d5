// What a map of gains against loads says, read off its cells.
import type { GainMapCell, GainMapPlan, GainVerdict } from '@/lib/assess/gain-map';

export interface DrawnMap {
  readonly plan: GainMapPlan;
  /** Load by load from the least, each from the least gain. */
  readonly cells: readonly GainMapCell[];
}

/** The cells of one load, from the least gain. */
export function rowOf({ plan, cells }: DrawnMap, load: number): readonly GainMapCell[] {
  const from = load * plan.gains.length;
  return cells.slice(from, from + plan.gains.length);
}

/** Place of the load nearest to a multiple of the stated one. */
export function nearestLoad({ loads }: GainMapPlan, multiple: number): number {
  return nearest(loads, (load) => Math.abs(load - multiple));
}

/** Place of the gain nearest to a gain, by ratio; null for a gain beyond the map. */
export function nearestGain({ gains }: GainMapPlan, gain: number | null): number | null {
  const [first, second] = gains;
  const last = gains.at(-1);
  if (gain === null || gain <= 0 || first === undefined || second === undefined || last === undefined)
    return null;
  const half = Math.sqrt(second / first);
  if (gain < first / half || gain > last * half) return null;
  return nearest(gains, (g) => Math.abs(Math.log(g / gain)));
}

function nearest(values: readonly number[], distance: (value: number) => number): number {
  return values.reduce(
    (best, value, i) => (distance(value) < distance(values[best] ?? Number.NaN) ? i : best),
    0,
  );
}

/** Place of the highest good gain of a load, which is where someone ends who raises it until the loop rings; null when none is good. */
export function highestGood(map: DrawnMap, load: number): number | null {
  const place = rowOf(map, load).findLastIndex((cell) => cell.verdict === 'good');
  return place < 0 ? null : place;
}

/** Neighbouring gains of one load on which the verdict is the same. */
export interface Run {
  readonly verdict: GainVerdict;
  readonly from: number;
  readonly to: number;
}

export function runsOf(map: DrawnMap, load: number): readonly Run[] {
  const runs: { verdict: GainVerdict; from: number; to: number }[] = [];
  rowOf(map, load).forEach(({ verdict }, i) => {
    const gain = map.plan.gains[i] ?? Number.NaN;
    const last = runs.at(-1);
    if (last?.verdict === verdict) last.to = gain;
    else runs.push({ verdict, from: gain, to: gain });
  });
  return runs;
}

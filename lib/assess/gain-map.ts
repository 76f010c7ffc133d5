// The map of gains against loads: how the position loop behaves at each proportional gain with each load, by simulation.
import type { Design } from '@/lib/design/document';

/** What is simulated: every gain with every load. Plain data, to be handed to workers. */
export interface GainMapPlan {
  /** Proportional gains, ascending, evenly spaced on a log scale. */
  readonly gains: readonly number[];
  /** Multiples of the stated load, ascending from 0 (none) to 2: its inertia, weight and friction together. */
  readonly loads: readonly number[];
  /** The gain entered; the load it is meant for is 1. */
  readonly present: number;
  /** The gain suggested for the stated load; null where none can be. */
  readonly suggested: number | null;
}

/** From slow to dangerous; a word for each stands in `gainVerdictLabels`. */
export type GainVerdict = 'sluggish' | 'good' | 'ringing' | 'unstable';

export const gainVerdictLabels = {
  sluggish: 'Sluggish',
  good: 'Good',
  ringing: 'Rings',
  unstable: 'Unstable',
} as const satisfies Readonly<Record<GainVerdict, string>>;

/** What one cell of the map says. Plain data. */
export interface GainMapCell {
  readonly verdict: GainVerdict;
  /** Over the size of the step, 0.1 for 10 %. */
  readonly overshoot: number;
  /** Seconds to stay within the band; null where it does not within the run. */
  readonly settling: number | null;
  /** Half the swing that remains at the end, rad at the output; 0 where it comes to rest. */
  readonly limitCycle: number;
}

/** What every cell of one document shares; made once in each worker. */
export interface PreparedGainMap {
  readonly document: Design;
}

/** The gains and loads of a document's map, or the sentence that says what to enter first. */
export function gainMapPlan(_document: Design): GainMapPlan | string {
  return 'The loop cannot be simulated yet.';
}

/** Reads the document once for all cells, or the sentence that says what to enter first. */
export function prepareGainMap(_document: Design): PreparedGainMap | string {
  return 'The loop cannot be simulated yet.';
}

/** Simulates one cell: the step of the loop's section at this gain with this multiple of the stated load. */
export function gainMapCell(_prepared: PreparedGainMap, _gain: number, _load: number): GainMapCell {
  throw new Error('The loop cannot be simulated yet.');
}

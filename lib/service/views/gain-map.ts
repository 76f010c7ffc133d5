// The map of gains against loads of one revision: the map itself, or how far it is.
import type { GainMapCell, GainMapPlan } from '@/lib/assess/gain-map';
import type { DesignHead } from './heads';

export interface GainMapView {
  readonly design: DesignHead;
  readonly letter: string;
  readonly documentHash: string;
  /** The method that simulates: always the present one. */
  readonly method: string;
  readonly map: GainMapState;
}

export type GainMapState =
  /** What to enter first. */
  | { readonly kind: 'lacking'; readonly sentence: string }
  | { readonly kind: 'none' }
  | ({ readonly kind: 'running' } & GainMapProgress)
  /** Cells load by load from the least, each from the least gain. */
  | { readonly kind: 'there'; readonly plan: GainMapPlan; readonly cells: readonly GainMapCell[] };

export interface GainMapProgress {
  /** Cells simulated. */
  readonly done: number;
  readonly total: number;
}

/** A map under way, as its page watches it. */
export interface GainMapWatch {
  /** Each change; the last says how it ended. The answer ends the listening. */
  readonly listen: (
    listener: (at: GainMapProgress & { readonly end: 'kept' | 'stopped' | 'failed' | null }) => void,
  ) => () => void;
}

// What passes between the service and the threads that simulate the cells of a map.
import type { GainMapCell } from '@/lib/assess/gain-map';
import type { Design } from '@/lib/design/document';

/** One gain with one load, which is a multiple of the stated one. */
export type Spot = readonly [gain: number, load: number];

/** To a thread: some spots of one job. */
export interface Share {
  readonly job: number;
  readonly spots: readonly Spot[];
  /** Sent with a thread's first share of a job; it then keeps what all spots have in common. */
  readonly document: Design | null;
}

/** To a thread: a job has ended, nothing of it need be kept. */
export interface Farewell {
  readonly job: number;
  readonly spots: null;
}

/** From a thread: the cells of a share, in the order of its spots, or why there are none. */
export type Answer =
  | { readonly job: number; readonly cells: readonly GainMapCell[] }
  | { readonly job: number; readonly failure: string };

// The coupon tests of a club as its page shows them.
import type { ClubView } from './heads';

export interface CouponTestView {
  readonly testId: string;
  readonly material: string;
  readonly property: string;
  /** MPa. */
  readonly mean: number;
  readonly deviation: number;
  /** Both with their unit. */
  readonly printed: string;
  readonly count: number;
  readonly process: string;
  readonly by: string;
  readonly at: string;
  /** Whether designs are worked with it: neither withdrawn nor followed by a later one of the same property. */
  readonly counts: boolean;
  /** What the catalogue holds in its place, with its unit; null where it holds nothing. */
  readonly catalogue: string | null;
  readonly withdrawn: { readonly by: string; readonly at: string; readonly reason: string } | null;
}

export interface CouponTestsView {
  readonly club: ClubView;
  readonly mayEnter: boolean;
  /** The latest first. */
  readonly tests: readonly CouponTestView[];
}

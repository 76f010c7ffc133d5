// Two revisions of a design, or a revision and the draft, side by side.
import type { Comparison } from '@/lib/compare/comparison';
import type { CurvePair, SharePair } from '@/lib/compare/curves';
import type { DesignHead, RevisionMark } from './heads';

export interface SideView {
  /** `A`, `B` … or `draft`. */
  readonly letter: string;
  readonly at: string;
  readonly documentHash: string;
  readonly method: string;
}

export interface CompareView {
  readonly design: DesignHead;
  readonly before: SideView;
  readonly after: SideView;
  readonly comparison: Comparison;
  /** Curves that changed, came or went. */
  readonly curves: readonly CurvePair[];
  /** The shares of the output's error, all of them when one changed. */
  readonly shares: readonly SharePair[];
  /** True when both sides were assessed by the same method; otherwise some change is the method's. */
  readonly sameMethod: boolean;
  readonly revisions: readonly RevisionMark[];
}

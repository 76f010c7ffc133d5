// What a revision changed since the one before it, in fields and in what follows for the weakest link and the checks.
import type { Comparison } from '@/lib/compare/comparison';

export interface ChangedView
  extends Pick<Comparison, 'fields' | 'items' | 'headlineBefore' | 'headlineAfter' | 'checks'> {
  /** Letter of the revision before. */
  readonly since: string;
  /** Findings that came, and that went. */
  readonly raised: number;
  readonly cleared: number;
  /** False when some of the difference may be the method's. */
  readonly sameMethod: boolean;
}

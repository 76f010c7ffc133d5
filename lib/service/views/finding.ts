// A finding and what was decided about it.
import type { Finding } from '@/lib/assess/assessment';
import type { DispositionKind } from '@/lib/review/dispositions';
import type { PersonView } from './heads';

export interface DispositionView {
  readonly kind: DispositionKind;
  readonly label: string;
  readonly reason: string;
  readonly by: PersonView;
  readonly at: string;
  /** Letter of the revision on which it was decided. */
  readonly madeOn: string;
}

export interface FindingView {
  readonly finding: Finding;
  /** Hash of its facts; send it back with a disposition. */
  readonly fingerprint: string;
  /** The one in force; null when the finding is open. */
  readonly disposition: DispositionView | null;
  /** One that lapsed because the facts changed; null when there is none. */
  readonly lapsed: DispositionView | null;
  readonly mayDispose: boolean;
  /** Why the viewer may not; null when they may. */
  readonly whyNot: string | null;
}

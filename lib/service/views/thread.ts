// A thread of remarks tied to one place of a revision.
import type { AnchorKind } from '@/lib/review/threads';
import type { PersonView } from './heads';

export interface RemarkView {
  readonly remarkId: string;
  readonly by: PersonView;
  readonly at: string;
  /** Markdown as written; show it through the sanitiser. Empty for a mere settling or reopening. */
  readonly text: string;
  /** What this entry did to the thread. */
  readonly act: 'opened' | 'replied' | 'resolved' | 'reopened';
}

export interface ThreadView {
  readonly threadId: string;
  /** Counts from 1 in its design. */
  readonly number: number;
  readonly anchor: { readonly kind: AnchorKind; readonly path: string; readonly label: string };
  /** Letter of the revision it was opened on. */
  readonly raisedOn: string;
  readonly state: 'open' | 'resolved';
  readonly openedBy: PersonView;
  readonly openedAt: string;
  readonly remarks: readonly RemarkView[];
  readonly mayReply: boolean;
  readonly mayResolve: boolean;
  readonly mayReopen: boolean;
}

// A working draft as the editor gets it.
import type { Assessment } from '@/lib/assess/assessment';
import type { DraftContent } from '@/lib/design/edit';
import type { DesignHead, PersonView, RevisionMark } from './heads';

export interface DraftView {
  readonly design: DesignHead;
  /** Send it back as `baseVersion`; a save on another version is refused. */
  readonly version: number;
  readonly updatedAt: string;
  readonly updatedBy: PersonView;
  readonly content: DraftContent;
  /** Of the saved document, without the worked sheet: what the page shows before its own preview runs. */
  readonly assessment: Assessment;
  /** Path → sentence for each text that is waiting in `content.pending`. */
  readonly problems: Readonly<Record<string, string>>;
  /** Whether the draft's document differs from the latest revision. */
  readonly ahead: boolean;
  readonly latest: RevisionMark | null;
  readonly nextLetter: string;
  readonly mayEdit: boolean;
  readonly mayPublish: boolean;
  /** Said before a reviewer's first edit, since who edits may not sign; null for those already barred. */
  readonly warning: string | null;
}

export interface DraftSaved {
  readonly version: number;
  readonly updatedAt: string;
  readonly content: DraftContent;
  readonly problems: Readonly<Record<string, string>>;
  /** One an edit, in the order sent: null when it was taken, a sentence when not. */
  readonly outcomes: readonly (string | null)[];
}

/** `detail` of the refusal `draft.stale`: the draft as it stands now. */
export interface DraftStale {
  readonly version: number;
  readonly updatedAt: string;
  readonly updatedBy: PersonView;
  readonly content: DraftContent;
  readonly problems: Readonly<Record<string, string>>;
}

// One revision as pages show it: the document as it was published, by whom, and why.
import type { Design } from '@/lib/design/document';
import type { PersonView } from './heads';

export interface RevisionView {
  readonly revisionId: string;
  readonly letter: string;
  readonly publishedAt: string;
  readonly author: PersonView;
  /** Everyone who had a hand in the design up to this revision; none of them may sign. */
  readonly hands: readonly PersonView[];
  readonly changeNote: string;
  readonly documentHash: string;
  readonly document: Design;
}

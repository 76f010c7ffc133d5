// The shelf of a club: all its designs in one table.
import type { Role } from '@/lib/access/policy';
import type { ClubView, HeadlineView, PersonView, StandingView } from './heads';

export interface ShelfRow {
  readonly number: string;
  readonly title: string;
  readonly author: PersonView;
  /** Null while nothing was published yet. */
  readonly latest: {
    readonly letter: string;
    readonly publishedAt: string;
    readonly standing: StandingView;
    readonly headline: HeadlineView;
    readonly openThreads: number;
  } | null;
  readonly draft: { readonly updatedAt: string; readonly updatedBy: PersonView; readonly ahead: boolean };
  /** What waits for this viewer, one sentence each; empty when nothing does. */
  readonly waiting: readonly string[];
}

export interface ShelfView {
  readonly club: ClubView;
  readonly role: Role;
  readonly mayCreate: boolean;
  readonly starters: readonly { readonly key: string; readonly label: string; readonly about: string }[];
  readonly rows: readonly ShelfRow[];
}

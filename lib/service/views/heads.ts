// Small shapes that several views share. Dates are ISO 8601 texts in UTC.
import type { Role } from '@/lib/access/policy';
import type { StandingKey } from '@/lib/review/standing';

export interface PersonView {
  readonly userId: string;
  readonly name: string;
}

export interface ClubView {
  readonly code: string;
  readonly name: string;
}

/** Where a revision stands. */
export interface StandingView {
  readonly key: StandingKey;
  /** e.g. `Under review`, `Released for bench spin`. */
  readonly label: string;
}

/** The weakest link in words and numbers; torques in N m. */
export interface HeadlineView {
  /** Label of the weakest check, e.g. `Stage 3 pinion, tooth root`; null when none could be assessed. */
  readonly weakest: string | null;
  readonly weakestKey: string | null;
  readonly holdsTo: number | null;
  readonly demanded: number;
  readonly forced: number | null;
  readonly factor: number | null;
  readonly required: number | null;
  readonly notAssessed: number;
  readonly findings: { readonly critical: number; readonly major: number; readonly minor: number };
}

/** The head of every page about a design. */
export interface DesignHead {
  readonly number: string;
  readonly title: string;
  readonly club: ClubView;
  readonly author: PersonView;
  /** Role of the viewer in the design's club. */
  readonly role: Role;
}

export interface RevisionMark {
  readonly letter: string;
  readonly publishedAt: string;
  readonly author: PersonView;
  readonly changeNote: string;
  readonly standing: StandingView;
}

// Who is asking. A viewer carries no authority: every use case reads the role again from the database.
import type { Role } from '@/lib/access/policy';

export interface ClubOfViewer {
  readonly code: string;
  readonly name: string;
  /** For what to show in menus only. */
  readonly role: Role;
}

export interface Viewer {
  readonly userId: string;
  readonly name: string;
  readonly email: string;
  readonly clubs: readonly ClubOfViewer[];
}

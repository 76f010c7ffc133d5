// The people of a club and its invitations.
import type { Role } from '@/lib/access/policy';
import type { ClubView } from './heads';

export interface MemberView {
  readonly userId: string;
  readonly name: string;
  readonly email: string;
  readonly role: Role;
  readonly roleLabel: string;
  readonly since: string;
  readonly endedAt: string | null;
}

export interface InvitationView {
  readonly invitationId: string;
  readonly email: string;
  readonly role: Role;
  readonly invitedBy: string;
  readonly expiresAt: string;
}

export interface MembersView {
  readonly club: ClubView;
  readonly role: Role;
  readonly mayChange: boolean;
  /** Present members first, then those who left. E-mails are empty for viewers who may not change members. */
  readonly members: readonly MemberView[];
  /** Open invitations; empty for viewers who may not change members. */
  readonly invitations: readonly InvitationView[];
}

/** Shown once: the token is stored only as a hash. */
export interface Invited {
  readonly invitationId: string;
  readonly token: string;
  readonly expiresAt: string;
}

/** What an invited person sees before joining. */
export interface InvitationOffer {
  readonly clubName: string;
  readonly clubCode: string;
  readonly email: string;
  readonly role: Role;
  readonly roleLabel: string;
  readonly expiresAt: string;
  /** Already has an account: joins with the existing password. */
  readonly known: boolean;
}

/** What a new session is made of. */
export interface SignedIn {
  readonly userId: string;
  readonly sessionVersion: number;
}

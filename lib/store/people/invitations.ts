// Invitations: found by the hash of their token, used once.
import type { Database } from '../database';
import type { KeptRole } from './members';

export interface KeptInvitation {
  readonly id: string;
  readonly clubId: string;
  readonly clubCode: string;
  readonly clubName: string;
  readonly email: string;
  readonly role: KeptRole;
  readonly expiresAt: Date;
}

export function createInvitation(
  tx: Database,
  data: {
    readonly clubId: string;
    readonly email: string;
    readonly role: KeptRole;
    readonly tokenHash: string;
    readonly invitedById: string;
    readonly expiresAt: Date;
  },
): Promise<{ id: string }> {
  return tx.invitation.create({ data, select: { id: true } });
}

/** The invitation with this token if it was neither used nor withdrawn; it may have expired. */
export async function openInvitation(db: Database, tokenHash: string): Promise<KeptInvitation | null> {
  const rows = await db.$queryRaw<KeptInvitation[]>`
    SELECT i.id, i.club_id AS "clubId", c.code AS "clubCode", c.name AS "clubName", i.email, i.role::text AS role,
      i.expires_at AS "expiresAt"
    FROM invitation i JOIN club c ON c.id = i.club_id
    WHERE i.token_hash = ${tokenHash} AND i.used_at IS NULL AND i.withdrawn_at IS NULL`;
  return rows[0] ?? null;
}

/** Marks it used; false when it was used, withdrawn or expired meanwhile. */
export async function markInvitationUsed(tx: Database, id: string): Promise<boolean> {
  const now = new Date();
  const used = await tx.invitation.updateMany({
    where: { id, usedAt: null, withdrawnAt: null, expiresAt: { gt: now } },
    data: { usedAt: now },
  });
  return used.count === 1;
}

export function openInvitations(db: Database, clubId: string) {
  return db.invitation.findMany({
    where: { clubId, usedAt: null, withdrawnAt: null, expiresAt: { gt: new Date() } },
    select: { id: true, email: true, role: true, expiresAt: true, invitedById: true },
    orderBy: { createdAt: 'desc' },
    take: 200,
  });
}

/** Withdraws every open invitation of an address to a club, or one by id; gives the addresses of those it met. */
export async function withdrawInvitations(
  tx: Database,
  which:
    | { readonly clubId: string; readonly email: string }
    | { readonly clubId: string; readonly id: string },
): Promise<string[]> {
  const met = await tx.invitation.updateManyAndReturn({
    where: { ...which, usedAt: null, withdrawnAt: null },
    data: { withdrawnAt: new Date() },
    select: { email: true },
  });
  return met.map((i) => i.email);
}

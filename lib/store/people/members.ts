// Clubs and who belongs to them.
import type { Database } from '../database';

export type KeptRole = 'steward' | 'safetyOfficer' | 'member' | 'guest';

export interface ClubOfPerson {
  readonly clubId: string;
  readonly code: string;
  readonly name: string;
  readonly role: KeptRole;
}

/** The club with this code if the person belongs to it now; null for no such club as for no membership. */
export async function clubOfPerson(db: Database, code: string, userId: string): Promise<ClubOfPerson | null> {
  const rows = await db.$queryRaw<ClubOfPerson[]>`
    SELECT c.id AS "clubId", c.code, c.name, m.role::text AS role
    FROM club c JOIN membership m ON m.club_id = c.id
    WHERE c.code = ${code} AND m.user_id = ${userId}::uuid AND m.ended_at IS NULL`;
  return rows[0] ?? null;
}

/** The role a person has now, their membership locked against change until the end of the transaction. */
export async function lockedRole(tx: Database, clubId: string, userId: string): Promise<KeptRole | null> {
  const rows = await tx.$queryRaw<{ role: KeptRole }[]>`
    SELECT role::text AS role FROM membership
    WHERE club_id = ${clubId}::uuid AND user_id = ${userId}::uuid AND ended_at IS NULL FOR SHARE`;
  return rows[0]?.role ?? null;
}

export function membersOf(db: Database, clubId: string) {
  return db.$queryRaw<
    { userId: string; name: string; email: string; role: KeptRole; startedAt: Date; endedAt: Date | null }[]
  >`
    SELECT u.id AS "userId", u.name, u.email, m.role::text AS role, m.started_at AS "startedAt", m.ended_at AS "endedAt"
    FROM membership m JOIN "user" u ON u.id = m.user_id
    WHERE m.club_id = ${clubId}::uuid ORDER BY (m.ended_at IS NOT NULL), u.name, u.id`;
}

/** Locks the club's row, so that changes of its members follow one another. */
export async function lockClub(tx: Database, clubId: string): Promise<void> {
  await tx.$queryRaw`SELECT id FROM club WHERE id = ${clubId}::uuid FOR NO KEY UPDATE`;
}

export function stewardCount(tx: Database, clubId: string): Promise<number> {
  return tx.membership.count({ where: { clubId, role: 'steward', endedAt: null } });
}

export function membership(tx: Database, clubId: string, userId: string) {
  return tx.membership.findUnique({
    where: { userId_clubId: { userId, clubId } },
    select: { id: true, role: true, endedAt: true },
  });
}

export async function endMembershipRow(tx: Database, id: string): Promise<void> {
  await tx.membership.update({ where: { id }, data: { endedAt: new Date() } });
}

export async function changeRoleRow(tx: Database, id: string, role: KeptRole): Promise<void> {
  await tx.membership.update({ where: { id }, data: { role } });
}

/** Makes a person a member, or again one. */
export async function startMembership(
  tx: Database,
  clubId: string,
  userId: string,
  role: KeptRole,
): Promise<void> {
  await tx.membership.upsert({
    where: { userId_clubId: { userId, clubId } },
    create: { userId, clubId, role },
    update: { role, startedAt: new Date(), endedAt: null },
  });
}

export async function isMemberByEmail(db: Database, clubId: string, email: string): Promise<boolean> {
  return (await db.membership.count({ where: { clubId, endedAt: null, user: { email } } })) > 0;
}

export function clubCount(db: Database): Promise<number> {
  return db.club.count();
}

export function createClub(
  tx: Database,
  data: { readonly code: string; readonly name: string; readonly ledgerHash: string },
): Promise<{ id: string }> {
  return tx.club.create({ data, select: { id: true } });
}

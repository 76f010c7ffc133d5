// People and what they sign in with.
import { askOften, type Database } from '../database';

export interface Account {
  readonly id: string;
  readonly email: string;
  readonly name: string;
  readonly passwordHash: string;
  readonly sessionVersion: number;
}

const account = { id: true, email: true, name: true, passwordHash: true, sessionVersion: true } as const;

export function accountByEmail(db: Database, email: string): Promise<Account | null> {
  return db.user.findUnique({ where: { email }, select: account });
}

export function accountById(db: Database, id: string): Promise<Account | null> {
  return db.user.findUnique({ where: { id }, select: account });
}

export function createAccount(
  tx: Database,
  data: { readonly email: string; readonly name: string; readonly passwordHash: string },
): Promise<Account> {
  return tx.user.create({ data, select: account });
}

/** Ends every session of a person. */
export async function endSessions(db: Database, id: string): Promise<void> {
  await db.user.update({ where: { id }, data: { sessionVersion: { increment: 1 } } });
}

/** Keeps a new password and ends every session; gives the new version of sessions. */
export async function keepPassword(db: Database, id: string, passwordHash: string): Promise<number> {
  const data = { passwordHash, sessionVersion: { increment: 1 } };
  return (await db.user.update({ where: { id }, data, select: { sessionVersion: true } })).sessionVersion;
}

interface PersonInClub {
  readonly id: string;
  readonly name: string;
  readonly email: string;
  readonly sessionVersion: number;
  readonly code: string | null;
  readonly club: string | null;
  readonly role: 'steward' | 'safetyOfficer' | 'member' | 'guest' | null;
}

const personAndClubs = `
  SELECT u.id, u.name, u.email, u.session_version AS "sessionVersion", c.code, c.name AS club, m.role::text AS role
  FROM "user" u
  LEFT JOIN membership m ON m.user_id = u.id AND m.ended_at IS NULL
  LEFT JOIN club c ON c.id = m.club_id
  WHERE u.id = $1::uuid ORDER BY c.name`;

/** A person with the version of their sessions and the clubs they belong to now: a row a club, one for a person of none. */
export function personWithClubs(id: string): Promise<PersonInClub[]> {
  return askOften('person and clubs', personAndClubs, [id]);
}

/** Names by id, for whatever a page shows. */
export async function namesOf(db: Database, ids: Iterable<string>): Promise<Map<string, string>> {
  const people = await db.user.findMany({
    where: { id: { in: [...new Set(ids)] } },
    select: { id: true, name: true },
  });
  return new Map(people.map((p) => [p.id, p.name]));
}

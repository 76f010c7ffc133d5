// A design together with what its viewer is in its club: the one question that every use case about designs asks first.
import { askOften, type Database } from '../database';
import type { KeptRole } from '../people/members';

export interface DesignAccess {
  readonly designId: string;
  readonly number: string;
  readonly title: string;
  readonly authorId: string;
  readonly authorName: string;
  readonly clubId: string;
  readonly clubCode: string;
  readonly clubName: string;
  readonly role: KeptRole;
}

const designAndRole = `
  SELECT d.id AS "designId", d.number, d.title, d.author_id AS "authorId", a.name AS "authorName",
    c.id AS "clubId", c.code AS "clubCode", c.name AS "clubName", m.role::text AS role
  FROM design d
  JOIN club c ON c.id = d.club_id
  JOIN membership m ON m.club_id = c.id AND m.user_id = $1::uuid AND m.ended_at IS NULL
  JOIN "user" a ON a.id = d.author_id
  WHERE d.number = $2`;

/** Null for no such design, for one of another club, and for a membership that ended. */
export async function designForPerson(number: string, userId: string): Promise<DesignAccess | null> {
  const rows = await askOften<DesignAccess>('design and role', designAndRole, [userId, number]);
  return rows[0] ?? null;
}

/** The number of the design a thread belongs to; null for no such thread. */
export async function numberOfThread(db: Database, threadId: string): Promise<string | null> {
  const thread = await db.thread.findUnique({
    where: { id: threadId },
    select: { design: { select: { number: true } } },
  });
  return thread?.design.number ?? null;
}

/** The number of the design a signature belongs to; null for no such signature. */
export async function numberOfSignOff(db: Database, signOffId: string): Promise<string | null> {
  const signOff = await db.signOff.findUnique({
    where: { id: signOffId },
    select: { revision: { select: { design: { select: { number: true } } } } },
  });
  return signOff?.revision.design.number ?? null;
}

export interface LockedDesign {
  readonly revisionCount: number;
  readonly threadCount: number;
}

/** Locks the design's row until the end of the transaction: publishing and signing follow one another. */
export async function lockDesign(tx: Database, designId: string): Promise<LockedDesign> {
  const rows = await tx.$queryRaw<LockedDesign[]>`
    SELECT revision_count AS "revisionCount", thread_count AS "threadCount" FROM design
    WHERE id = ${designId}::uuid FOR NO KEY UPDATE`;
  const row = rows[0];
  if (row === undefined) throw new Error('The design to lock is gone.');
  return row;
}

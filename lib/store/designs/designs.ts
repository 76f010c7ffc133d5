// Designs: numbering within a club, and the list of a shelf.
import type { Database } from '../database';

/** The next number of a club, dense: the club's row stays locked until the end of the transaction. */
export async function createDesign(
  tx: Database,
  data: { readonly clubId: string; readonly title: string; readonly authorId: string },
): Promise<{ id: string; number: string }> {
  const { designCount, code } = await tx.club.update({
    where: { id: data.clubId },
    data: { designCount: { increment: 1 } },
    select: { designCount: true, code: true },
  });
  const number = `${code}-${String(designCount).padStart(3, '0')}`;
  return tx.design.create({
    data: { ...data, sequence: designCount, number },
    select: { id: true, number: true },
  });
}

export interface ShelfDesign {
  readonly designId: string;
  readonly number: string;
  readonly title: string;
  readonly authorId: string;
  readonly draftHash: string;
  readonly draftUpdatedAt: Date;
  readonly draftUpdatedById: string;
  readonly draftHands: string[];
}

/** All designs of a club, the one touched last first. */
export function designsOfClub(db: Database, clubId: string): Promise<ShelfDesign[]> {
  return db.$queryRaw<ShelfDesign[]>`
    SELECT d.id AS "designId", d.number, d.title, d.author_id AS "authorId", f.document_hash AS "draftHash",
      f.updated_at AS "draftUpdatedAt", f.updated_by_id AS "draftUpdatedById", f.hands AS "draftHands"
    FROM design d JOIN draft f ON f.design_id = d.id
    WHERE d.club_id = ${clubId}::uuid ORDER BY d.sequence`;
}

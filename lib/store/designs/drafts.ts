// Drafts: one a design, under an optimistic lock.
import { z } from 'zod';
import type { DraftContent } from '@/lib/design/edit';
import { openDocument } from '@/lib/design/open';
import type { Database } from '../database';

export interface KeptDraft {
  readonly content: DraftContent;
  readonly documentHash: string;
  readonly version: number;
  readonly hands: readonly string[];
  readonly updatedById: string;
  readonly updatedByName: string;
  readonly updatedAt: Date;
}

const kept = z.object({ document: z.unknown(), pending: z.record(z.string(), z.string()) });

/** What was stored → a valid draft. Throws when it is none, which only a damaged database can bring about. */
function readContent(raw: unknown): DraftContent {
  const { document, pending } = kept.parse(raw);
  const opened = openDocument(document);
  if (!opened.ok) throw new Error(`A stored draft cannot be read: ${opened.problems[0]?.sentence ?? ''}`);
  return { document: opened.document, pending };
}

export async function readDraft(db: Database, designId: string): Promise<KeptDraft> {
  const row = await db.draft.findUniqueOrThrow({
    where: { designId },
    include: { updatedBy: { select: { name: true } } },
  });
  return { ...row, content: readContent(row.content), updatedByName: row.updatedBy.name };
}

/** Locks the draft until the end of the transaction, then reads it. */
export async function lockDraft(tx: Database, designId: string): Promise<KeptDraft> {
  await tx.$queryRaw`SELECT design_id FROM draft WHERE design_id = ${designId}::uuid FOR NO KEY UPDATE`;
  return readDraft(tx, designId);
}

export interface DraftToKeep {
  readonly content: DraftContent;
  readonly documentHash: string;
  readonly byId: string;
  readonly at: Date;
}

export async function createDraft(tx: Database, designId: string, draft: DraftToKeep): Promise<void> {
  await tx.$executeRaw`
    INSERT INTO draft (design_id, content, document_hash, version, hands, updated_by_id, updated_at)
    VALUES (${designId}::uuid, ${JSON.stringify(draft.content)}::jsonb, ${draft.documentHash}, 1,
      ARRAY[${draft.byId}::uuid], ${draft.byId}::uuid, ${draft.at})`;
}

/**
 * Keeps a draft as the version after `baseVersion`, and notes the person among its hands. False when the draft is no longer at
 * `baseVersion`; nothing is changed then.
 */
export async function keepDraft(
  tx: Database,
  designId: string,
  baseVersion: number,
  draft: DraftToKeep,
): Promise<boolean> {
  const count = await tx.$executeRaw`
    UPDATE draft SET content = ${JSON.stringify(draft.content)}::jsonb, document_hash = ${draft.documentHash},
      version = version + 1, updated_by_id = ${draft.byId}::uuid, updated_at = ${draft.at},
      hands = CASE WHEN ${draft.byId}::uuid = ANY(hands) THEN hands ELSE hands || ${draft.byId}::uuid END
    WHERE design_id = ${designId}::uuid AND version = ${baseVersion}`;
  return count === 1;
}

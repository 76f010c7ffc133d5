// Revisions and their assessments: written once, read many times.
import { randomUUID } from 'node:crypto';
import { z } from 'zod';
import type { Assessment } from '@/lib/assess/assessment';
import { openAssessment } from '@/lib/assess/open';
import type { Design } from '@/lib/design/document';
import { openDocument } from '@/lib/design/open';
import type { ReviewFacts } from '@/lib/review/facts';
import type { Database } from '../database';

export interface RevisionToKeep {
  readonly designId: string;
  readonly ordinal: number;
  readonly letter: string;
  readonly document: Design;
  readonly documentHash: string;
  readonly changeNote: string;
  readonly authorId: string;
  readonly hands: readonly string[];
  readonly publishedAt: Date;
}

/** Adds a revision and counts it on its design, whose row must be locked. */
export async function createRevision(tx: Database, revision: RevisionToKeep): Promise<{ id: string }> {
  const { document, hands, ...row } = revision;
  const created = await tx.revision.create({
    data: { ...row, hands: [...hands], document: json(document) },
    select: { id: true },
  });
  await tx.$executeRaw`UPDATE design SET revision_count = ${row.ordinal} WHERE id = ${row.designId}::uuid`;
  return created;
}

export interface AssessmentToKeep {
  readonly revisionId: string;
  readonly result: Assessment;
  readonly hash: string;
  readonly headline: KeptHeadline;
  readonly facts: ReviewFacts;
  readonly madeAt: Date;
}

/** The headline as lists show it; torques in N m. */
export const keptHeadline = z.object({
  weakest: z.string().nullable(),
  weakestKey: z.string().nullable(),
  holdsTo: z.number().nullable(),
  demanded: z.number(),
  forced: z.number().nullable(),
  factor: z.number().nullable(),
  required: z.number().nullable(),
  notAssessed: z.number(),
  findings: z.object({ critical: z.number(), major: z.number(), minor: z.number() }),
});

export type KeptHeadline = z.infer<typeof keptHeadline>;

export async function createAssessment(tx: Database, assessment: AssessmentToKeep): Promise<{ id: string }> {
  const { revisionId, result, hash, headline, facts, madeAt } = assessment;
  const id = randomUUID();
  // As text: the client would walk through the whole result, worked sheet and all, before it writes the same text.
  await tx.$executeRaw`
    INSERT INTO assessment (id, revision_id, method, result, hash, headline, facts, made_at)
    VALUES (${id}::uuid, ${revisionId}::uuid, ${result.method}, ${JSON.stringify(result)}::jsonb, ${hash},
      ${JSON.stringify(headline)}::jsonb, ${JSON.stringify(facts)}::jsonb, ${madeAt})`;
  return { id };
}

export interface KeptRevision {
  readonly id: string;
  readonly ordinal: number;
  readonly letter: string;
  readonly document: Design;
  /** As stored, before any upgrade: what the hash was taken of. */
  readonly stored: unknown;
  readonly documentHash: string;
  readonly changeNote: string;
  readonly authorId: string;
  readonly hands: readonly string[];
  readonly publishedAt: Date;
}

/** One revision with its document; the latest when no letter is given; null when there is none. */
export async function readRevision(
  db: Database,
  designId: string,
  letter?: string,
): Promise<KeptRevision | null> {
  const row = await db.revision.findFirst({
    where: { designId, ...(letter === undefined ? {} : { letter }) },
    orderBy: { ordinal: 'desc' },
  });
  if (row === null) return null;
  return { ...row, stored: row.document, document: opened(row.document) };
}

/** The document of a revision that is known to exist. */
export async function readDocument(db: Database, revisionId: string): Promise<Design> {
  const where = { id: revisionId };
  const row = await db.revision.findUniqueOrThrow({ where, select: { document: true } });
  return opened(row.document);
}

function opened(stored: unknown): Design {
  const read = openDocument(stored);
  if (!read.ok) throw new Error(`A stored revision cannot be read: ${read.problems[0]?.sentence ?? ''}`);
  return read.document;
}

export interface KeptAssessment {
  readonly id: string;
  readonly method: string;
  readonly hash: string;
  readonly madeAt: Date;
  readonly result: Assessment;
  /** As stored, before anything was filled in: what the hash was taken of. */
  readonly stored: unknown;
}

/** The newest assessment of a revision, or the one of a method; null when there is none. */
export async function readAssessment(
  db: Database,
  revisionId: string,
  method?: string,
): Promise<KeptAssessment | null> {
  const row = await db.assessment.findFirst({
    where: { revisionId, ...(method === undefined ? {} : { method }) },
    orderBy: [{ madeAt: 'desc' }, { id: 'desc' }],
    select: { id: true, method: true, hash: true, madeAt: true, result: true },
  });
  return row === null ? null : { ...row, stored: row.result, result: openAssessment(row.result) };
}

/** The result of an assessment that is known to exist. */
export async function readResult(db: Database, assessmentId: string): Promise<Assessment> {
  const where = { id: assessmentId };
  const row = await db.assessment.findUniqueOrThrow({ where, select: { result: true } });
  return openAssessment(row.result);
}

/** A document as Prisma takes it: plain JSON by its type; the copy drops what JSON cannot say. */
function json(value: Design) {
  return JSON.parse(JSON.stringify(value));
}

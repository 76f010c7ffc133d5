// The record of review of one or many designs: revisions without their documents, signatures, decisions, threads.
import type { DispositionKind } from '@/lib/review/dispositions';
import { type ReviewFacts, reviewFacts } from '@/lib/review/facts';
import type { HoldPoint } from '@/lib/review/hold-points';
import type { AnchorKind } from '@/lib/review/threads';
import type { Database } from '../database';
import { type KeptHeadline, keptHeadline } from '../designs/revisions';
import type { KeptRole } from '../people/members';

export interface RevisionRow {
  readonly designId: string;
  readonly revisionId: string;
  readonly ordinal: number;
  readonly letter: string;
  readonly publishedAt: Date;
  readonly authorId: string;
  readonly hands: readonly string[];
  readonly changeNote: string;
  readonly documentHash: string;
  /** Of the newest assessment. */
  readonly assessmentId: string;
  readonly assessmentHash: string;
  readonly method: string;
  readonly headline: KeptHeadline;
  readonly facts: ReviewFacts;
}

export interface SignOffRow {
  readonly id: string;
  readonly revisionId: string;
  readonly holdPoint: HoldPoint;
  readonly signerId: string;
  readonly round: number;
  readonly roleThen: KeptRole;
  readonly meaning: string;
  readonly meaningVersion: number;
  readonly requirementsVersion: number;
  readonly documentHash: string;
  readonly assessmentHash: string;
  readonly method: string;
  readonly at: Date;
  readonly voidById: string | null;
  readonly voidReason: string | null;
  readonly voidAt: Date | null;
}

export interface DispositionRow {
  readonly designId: string;
  readonly findingKey: string;
  readonly fingerprint: string;
  readonly ordinal: number;
  readonly letter: string;
  readonly kind: DispositionKind;
  readonly reason: string;
  readonly byId: string;
  readonly at: Date;
}

export interface ThreadRow {
  readonly id: string;
  readonly designId: string;
  readonly number: number;
  readonly ordinal: number;
  readonly letter: string;
  readonly anchorKind: AnchorKind;
  readonly anchorPath: string;
  readonly anchorLabel: string;
  readonly state: 'open' | 'resolved';
  readonly openedById: string;
  readonly openedAt: Date;
}

export interface ReviewRecord {
  /** By design, then newest first. */
  readonly revisions: readonly RevisionRow[];
  readonly signOffs: readonly SignOffRow[];
  readonly dispositions: readonly DispositionRow[];
  readonly threads: readonly ThreadRow[];
}

/**
 * The record of some designs in four queries, however many there are.
 * @param which `latest` leaves out all revisions but the latest of each design, and settled threads
 */
export async function readRecord(
  db: Database,
  designIds: readonly string[],
  which: 'all' | 'latest',
): Promise<ReviewRecord> {
  const ids = [...designIds];
  const latest = which === 'latest';
  // One after the other: inside a transaction there is one connection only.
  const revisions = await db.$queryRaw<(RevisionRow & { headline: unknown; facts: unknown })[]>`
    SELECT r.design_id AS "designId", r.id AS "revisionId", r.ordinal, r.letter, r.published_at AS "publishedAt",
      r.author_id AS "authorId", r.hands, r.change_note AS "changeNote", r.document_hash AS "documentHash",
      a.id AS "assessmentId", a.hash AS "assessmentHash", a.method, a.headline, a.facts
    FROM revision r
    JOIN design d ON d.id = r.design_id
    CROSS JOIN LATERAL (
      SELECT id, hash, method, headline, facts FROM assessment
      WHERE revision_id = r.id ORDER BY made_at DESC, id DESC LIMIT 1
    ) a
    WHERE r.design_id = ANY(${ids}::uuid[]) AND (NOT ${latest}::boolean OR r.ordinal = d.revision_count)
    ORDER BY r.design_id, r.ordinal DESC`;
  const signOffs = await db.$queryRaw<SignOffRow[]>`
    SELECT s.id, s.revision_id AS "revisionId", s.hold_point::text AS "holdPoint", s.signer_id AS "signerId", s.round,
      s.role_then::text AS "roleThen", s.meaning, s.meaning_version AS "meaningVersion",
      s.requirements_version AS "requirementsVersion", s.document_hash AS "documentHash",
      s.assessment_hash AS "assessmentHash", s.method, s.at,
      v.by_id AS "voidById", v.reason AS "voidReason", v.at AS "voidAt"
    FROM sign_off s
    JOIN revision r ON r.id = s.revision_id
    JOIN design d ON d.id = r.design_id
    LEFT JOIN sign_off_void v ON v.sign_off_id = s.id
    WHERE r.design_id = ANY(${ids}::uuid[]) AND (NOT ${latest}::boolean OR r.ordinal = d.revision_count)
    ORDER BY s.at, s.id`;
  const dispositions = await db.$queryRaw<DispositionRow[]>`
    SELECT p.design_id AS "designId", p.finding_key AS "findingKey", p.fingerprint, r.ordinal, r.letter,
      p.kind::text AS kind, p.reason, p.by_id AS "byId", p.at
    FROM disposition p JOIN revision r ON r.id = p.revision_id
    WHERE p.design_id = ANY(${ids}::uuid[]) ORDER BY p.at, p.id`;
  const threads = await db.$queryRaw<ThreadRow[]>`
    SELECT t.id, t.design_id AS "designId", t.number, r.ordinal, r.letter, t.anchor_kind::text AS "anchorKind",
      t.anchor_path AS "anchorPath", t.anchor_label AS "anchorLabel", t.state::text AS state,
      t.opened_by_id AS "openedById", t.opened_at AS "openedAt"
    FROM thread t JOIN revision r ON r.id = t.revision_id
    WHERE t.design_id = ANY(${ids}::uuid[]) AND (NOT ${latest}::boolean OR t.state = 'open')
    ORDER BY t.state, t.number`;
  return {
    revisions: revisions.map((r) => ({
      ...r,
      headline: keptHeadline.parse(r.headline),
      facts: reviewFacts.parse(r.facts),
    })),
    signOffs,
    dispositions,
    threads,
  };
}

export interface AssessmentRow {
  readonly method: string;
  readonly madeAt: Date;
  readonly hash: string;
}

/** The assessments of a revision, newest first, without their results. */
export async function assessmentMarks(db: Database, revisionId: string): Promise<AssessmentRow[]> {
  return db.assessment.findMany({
    where: { revisionId },
    orderBy: [{ madeAt: 'desc' }, { id: 'desc' }],
    select: { method: true, madeAt: true, hash: true },
  });
}

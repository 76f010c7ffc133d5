// The record of review of one or many designs: revisions without their documents, signatures, decisions, threads.
import { Prisma } from '@/generated/prisma/client';
import type { DispositionKind } from '@/lib/review/dispositions';
import { type ReviewFacts, reviewFacts } from '@/lib/review/facts';
import type { HoldPoint } from '@/lib/review/hold-points';
import type { AnchorKind } from '@/lib/review/threads';
import { askOften, type Database, reader } from '../database';
import { type KeptHeadline, keptHeadline } from '../designs/revisions';
import { Kept } from '../kept';
import type { KeptRole } from '../people/members';
import type { RemarkRow } from './threads';

export interface AssessmentRow {
  readonly id: string;
  readonly method: string;
  readonly madeAt: Date;
  readonly hash: string;
}

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
  /** All its assessments, newest first, without their results. */
  readonly assessments: readonly AssessmentRow[];
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
  /** Of these threads, oldest first; none are read with `latest`. */
  readonly remarks: readonly RemarkRow[];
  /** Name by id of everyone who is or was in the clubs of these designs. */
  readonly names: ReadonlyMap<string, string>;
}

/** As JSON brings it: moments are texts. */
type InJson<T> = T extends Date ? string : T extends object ? { readonly [K in keyof T]: InJson<T[K]> } : T;

interface RecordInJson {
  readonly revisions: readonly InJson<Omit<RevisionRow, 'headline' | 'facts'>>[];
  readonly signOffs: readonly InJson<SignOffRow>[];
  readonly dispositions: readonly InJson<DispositionRow>[];
  readonly threads: readonly InJson<ThreadRow>[];
  readonly remarks: readonly InJson<RemarkRow>[];
  readonly names: Readonly<Record<string, string>> | null;
}

/**
 * The record of some designs in one query, however many there are, and one more for what is read the first time.
 * @param which `latest` leaves out all revisions but the latest of each design, and settled threads
 */
export async function readRecord(
  db: Database,
  designIds: readonly string[],
  which: 'all' | 'latest',
): Promise<ReviewRecord> {
  const ids = [...designIds];
  const latest = which === 'latest';
  // As one JSON value: four queries would cost the service several times what they cost the database.
  const query = Prisma.sql`
    WITH counted AS (
      SELECT r.* FROM revision r JOIN design d ON d.id = r.design_id
      WHERE r.design_id = ANY(${ids}::uuid[]) AND (NOT ${latest}::boolean OR r.ordinal = d.revision_count)
    ), revisions AS (
      SELECT r.design_id AS "designId", r.id AS "revisionId", r.ordinal, r.letter, r.published_at AS "publishedAt",
        r.author_id AS "authorId", r.hands, r.change_note AS "changeNote", r.document_hash AS "documentHash",
        a.made AS assessments, a.made->0->>'id' AS "assessmentId", a.made->0->>'hash' AS "assessmentHash",
        a.made->0->>'method' AS method
      FROM counted r
      CROSS JOIN LATERAL (
        SELECT json_agg(json_build_object('id', id, 'hash', hash, 'method', method, 'madeAt', made_at)
          ORDER BY made_at DESC, id DESC) AS made
        FROM assessment WHERE revision_id = r.id HAVING count(*) > 0
      ) a
    ), sign_offs AS (
      SELECT s.id, s.revision_id AS "revisionId", s.hold_point::text AS "holdPoint", s.signer_id AS "signerId", s.round,
        s.role_then::text AS "roleThen", s.meaning, s.meaning_version AS "meaningVersion",
        s.requirements_version AS "requirementsVersion", s.document_hash AS "documentHash",
        s.assessment_hash AS "assessmentHash", s.method, s.at,
        v.by_id AS "voidById", v.reason AS "voidReason", v.at AS "voidAt"
      FROM sign_off s
      JOIN counted r ON r.id = s.revision_id
      LEFT JOIN sign_off_void v ON v.sign_off_id = s.id
    ), dispositions AS (
      SELECT p.id, p.design_id AS "designId", p.finding_key AS "findingKey", p.fingerprint, r.ordinal, r.letter,
        p.kind::text AS kind, p.reason, p.by_id AS "byId", p.at
      FROM disposition p JOIN revision r ON r.id = p.revision_id
      WHERE p.design_id = ANY(${ids}::uuid[])
    ), threads AS (
      SELECT t.id, t.design_id AS "designId", t.number, r.ordinal, r.letter, t.anchor_kind::text AS "anchorKind",
        t.anchor_path AS "anchorPath", t.anchor_label AS "anchorLabel", t.state::text AS state,
        t.opened_by_id AS "openedById", t.opened_at AS "openedAt"
      FROM thread t JOIN revision r ON r.id = t.revision_id
      WHERE t.design_id = ANY(${ids}::uuid[]) AND (NOT ${latest}::boolean OR t.state = 'open')
    )
    SELECT json_build_object(
      'names', (
        SELECT json_object_agg(u.id, u.name) FROM "user" u WHERE u.id IN (
          SELECT m.user_id FROM membership m JOIN design d ON d.club_id = m.club_id WHERE d.id = ANY(${ids}::uuid[])
        )
      ),
      'remarks', (
        SELECT coalesce(json_agg(x ORDER BY at, id), '[]') FROM (
          SELECT m.id, m.thread_id AS "threadId", m.by_id AS "byId", m.at, m.text, m.act::text AS act
          FROM remark m WHERE NOT ${latest}::boolean AND m.thread_id IN (SELECT id FROM threads)
        ) x
      ),
      'revisions', (SELECT coalesce(json_agg(x ORDER BY "designId", ordinal DESC), '[]') FROM revisions x),
      'signOffs', (SELECT coalesce(json_agg(x ORDER BY at, id), '[]') FROM sign_offs x),
      'dispositions', (SELECT coalesce(json_agg(x ORDER BY at, id), '[]') FROM dispositions x),
      'threads', (SELECT coalesce(json_agg(x ORDER BY state, number), '[]') FROM threads x)
    ) AS record`;
  const rows =
    db === reader()
      ? await askOften<{ record: RecordInJson }>('record', query.text, query.values)
      : await db.$queryRaw<{ record: RecordInJson }[]>(query);
  const row = rows[0];
  if (row === undefined) throw new Error('The record of review gave no answer.');
  return recordOf(db, row.record);
}

async function recordOf(db: Database, found: RecordInJson): Promise<ReviewRecord> {
  const facts = await factsByAssessment(
    db,
    found.revisions.map((r) => r.assessmentId),
  );
  return {
    revisions: found.revisions.map((r) => ({
      ...r,
      publishedAt: new Date(r.publishedAt),
      assessments: r.assessments.map((a) => ({ ...a, madeAt: new Date(a.madeAt) })),
      ...facts(r.assessmentId),
    })),
    signOffs: found.signOffs.map((s) => ({
      ...s,
      at: new Date(s.at),
      voidAt: s.voidAt === null ? null : new Date(s.voidAt),
    })),
    dispositions: found.dispositions.map((d) => ({ ...d, at: new Date(d.at) })),
    threads: found.threads.map((t) => ({ ...t, openedAt: new Date(t.openedAt) })),
    remarks: found.remarks.map((r) => ({ ...r, at: new Date(r.at) })),
    names: new Map(Object.entries(found.names ?? {})),
  };
}

type Stated = Pick<RevisionRow, 'headline' | 'facts'>;

/** Assessments never change: what they state is read once. */
const stated = new Kept<Stated>(500);

/** What some assessments state; only those not read before are asked for. */
async function factsByAssessment(db: Database, ids: readonly string[]): Promise<(id: string) => Stated> {
  const here = new Map<string, Stated>();
  const wanting: string[] = [];
  for (const id of ids) {
    const known = stated.get(id);
    if (known === undefined) wanting.push(id);
    else here.set(id, known);
  }
  if (wanting.length > 0) {
    const where = { id: { in: wanting } };
    const rows = await db.assessment.findMany({ where, select: { id: true, headline: true, facts: true } });
    for (const { id, headline, facts } of rows) {
      const read = { headline: keptHeadline.parse(headline), facts: reviewFacts.parse(facts) };
      here.set(id, stated.hold(id, read));
    }
  }
  return (id) => {
    const found = here.get(id);
    if (found === undefined) throw new Error('An assessment of the record is gone.');
    return found;
  };
}

// Everything that stands on a revision's sheet, read together: for the sheet itself and for the page where it is signed.
import type { Assessment } from '@/lib/assess/assessment';
import { reader } from '@/lib/store/database';
import { readAssessment, readRevision } from '@/lib/store/designs/revisions';
import {
  type AssessmentRow,
  assessmentMarks,
  type ReviewRecord,
  readRecord,
} from '@/lib/store/review/record';
import { remarksOf } from '@/lib/store/review/threads';
import { idsOf, type JudgedRevision, judgeRecord } from '../designs/judged';
import { findingViews } from '../findings/views';
import { hadHand } from '../findings/weight';
import { type People, peopleOf } from '../people';
import { done, type Result, refused } from '../result';
import { threadViews } from '../threads/views';
import type { DesignContext } from '../use-case';
import type { FindingView } from '../views/finding';
import type { RevisionView } from '../views/revision';
import type { AssessmentMark } from '../views/sheet';
import type { ThreadView } from '../views/thread';

export interface SheetReading {
  readonly record: ReviewRecord;
  /** All revisions of the design, newest first. */
  readonly all: readonly JudgedRevision[];
  readonly judged: JudgedRevision;
  readonly revision: RevisionView;
  readonly assessment: Assessment;
  readonly shown: AssessmentMark;
  readonly marks: readonly AssessmentMark[];
  readonly findings: readonly FindingView[];
  readonly threads: readonly ThreadView[];
  readonly people: People;
}

/** @param method of the assessment to show; left out: the newest */
export async function readSheet(
  context: DesignContext,
  letter: string | undefined,
  method?: string,
): Promise<Result<SheetReading>> {
  const db = reader();
  const { designId } = context.design;
  const [record, kept] = await Promise.all([
    readRecord(db, [designId], 'all'),
    readRevision(db, designId, letter),
  ]);
  if (kept === null) return refused('revision.notFound');
  const all = judgeRecord(record);
  const judged = all.find((j) => j.row.revisionId === kept.id);
  // Published between the two reads: it is there at the next one.
  if (judged === undefined) return refused('service.busy');
  // Threads raised later say nothing about this revision; they stand on the sheet of their own.
  const rows = record.threads.filter((t) => t.ordinal <= kept.ordinal);
  const [assessment, marks, remarks] = await Promise.all([
    readAssessment(db, kept.id, method),
    assessmentMarks(db, kept.id),
    remarksOf(
      db,
      rows.map((t) => t.id),
    ),
  ]);
  if (assessment === null) return refused('revision.notFound');
  const people = await peopleOf(db, [...idsOf(record), ...remarks.map((r) => r.byId)]);
  return done({
    record,
    all,
    judged,
    revision: {
      revisionId: kept.id,
      letter: kept.letter,
      publishedAt: kept.publishedAt.toISOString(),
      author: people(kept.authorId),
      hands: kept.hands.map(people),
      changeNote: kept.changeNote,
      documentHash: kept.documentHash,
      document: kept.document,
    },
    assessment: assessment.result,
    shown: markOf(assessment),
    marks: marks.map(markOf),
    findings: findingViews(assessment.result, judged, context, people),
    threads: threadViews(rows, remarks, context, hadHand(context, judged.row), people),
    people,
  });
}

function markOf({ method, madeAt, hash }: AssessmentRow): AssessmentMark {
  return { method, madeAt: madeAt.toISOString(), hash };
}

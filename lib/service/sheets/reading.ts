// Everything that stands on a revision's sheet, read together: for the sheet itself and for the page where it is signed.
import type { Assessment } from '@/lib/assess/assessment';
import { reader } from '@/lib/store/database';
import { documentOf, resultOf } from '@/lib/store/designs/unchanging';
import { type AssessmentRow, type ReviewRecord, readRecord } from '@/lib/store/review/record';
import { type JudgedRevision, judgeRecord } from '../designs/judged';
import { findingViews } from '../findings/views';
import { hadHand } from '../findings/weight';
import { type People, peopleNamed } from '../people';
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
  const record = await readRecord(db, [designId], 'all');
  const all = judgeRecord(record);
  const judged = letter === undefined ? all[0] : all.find((j) => j.row.letter === letter);
  if (judged === undefined) return refused('revision.notFound');
  const { row } = judged;
  // Threads raised later say nothing about this revision; they stand on the sheet of their own.
  const rows = record.threads.filter((t) => t.ordinal <= row.ordinal);
  const marks = row.assessments;
  const mark = method === undefined ? marks[0] : marks.find((m) => m.method === method);
  if (mark === undefined) return refused('revision.notFound');
  const document = await documentOf(db, row.revisionId);
  const assessment = await resultOf(db, mark.id);
  const people = peopleNamed(record.names);
  return done({
    record,
    all,
    judged,
    revision: {
      revisionId: row.revisionId,
      letter: row.letter,
      publishedAt: row.publishedAt.toISOString(),
      author: people(row.authorId),
      hands: row.hands.map(people),
      changeNote: row.changeNote,
      documentHash: row.documentHash,
      document,
    },
    assessment,
    shown: markOf(mark),
    marks: marks.map(markOf),
    findings: findingViews(assessment, judged, context, people),
    threads: threadViews(rows, record.remarks, context, hadHand(context, row), people),
    people,
  });
}

function markOf({ method, madeAt, hash }: AssessmentRow): AssessmentMark {
  return { method, madeAt: madeAt.toISOString(), hash };
}

// The record of review with the rules applied: the judgement of each revision.
import { type Judgement, judge, standingLabels } from '@/lib/review/standing';
import { weighsOn } from '@/lib/review/threads';
import type {
  DispositionRow,
  ReviewRecord,
  RevisionRow,
  SignOffRow,
  ThreadRow,
} from '@/lib/store/review/record';
import type { People } from '../people';
import type { RevisionMark, StandingView } from '../views/heads';

/** One revision with everything that bears on it. */
export interface JudgedRevision {
  readonly row: RevisionRow;
  readonly signOffs: readonly SignOffRow[];
  /** Of the whole design, oldest first. */
  readonly dispositions: readonly DispositionRow[];
  /** Open threads that weigh on this revision. */
  readonly openThreads: readonly ThreadRow[];
  readonly judgement: Judgement;
  readonly supersededBy: string | null;
}

/** Judges every revision of a record; they come in the record's order, newest first within a design. */
export function judgeRecord(record: ReviewRecord): JudgedRevision[] {
  const latest = new Map<string, RevisionRow>();
  for (const r of record.revisions) {
    const known = latest.get(r.designId);
    if (known === undefined || known.ordinal < r.ordinal) latest.set(r.designId, r);
  }
  return record.revisions.map((row) => {
    const signOffs = record.signOffs.filter((s) => s.revisionId === row.revisionId);
    const dispositions = record.dispositions.filter((d) => d.designId === row.designId);
    const openThreads = record.threads.filter(
      (t) => t.designId === row.designId && t.state === 'open' && weighsOn(t.ordinal, row.ordinal),
    );
    const newest = latest.get(row.designId);
    const supersededBy = newest === undefined || newest.ordinal === row.ordinal ? null : newest.letter;
    const judgement = judge(
      {
        facts: row.facts,
        ordinal: row.ordinal,
        dispositions,
        openThreads: openThreads.map((t) => t.number),
        supersededBy,
      },
      signOffs.map((s) => ({ ...s, withdrawn: s.voidAt !== null })),
    );
    return { row, signOffs, dispositions, openThreads, judgement, supersededBy };
  });
}

export function standingView({ judgement }: JudgedRevision): StandingView {
  return { key: judgement.standing, label: standingLabels[judgement.standing] };
}

export function revisionMark(judged: JudgedRevision, people: People): RevisionMark {
  const { row } = judged;
  return {
    letter: row.letter,
    publishedAt: row.publishedAt.toISOString(),
    author: people(row.authorId),
    changeNote: row.changeNote,
    standing: standingView(judged),
  };
}

/** Everyone whose name a page about these revisions shows. */
export function idsOf(record: ReviewRecord): string[] {
  return [
    ...record.revisions.flatMap((r) => [r.authorId, ...r.hands]),
    ...record.signOffs.flatMap((s) => (s.voidById === null ? [s.signerId] : [s.signerId, s.voidById])),
    ...record.dispositions.map((d) => d.byId),
    ...record.threads.map((t) => t.openedById),
  ];
}

// What a revision changed since the one before it, for its sheet.
import { compare } from '@/lib/compare/compare';
import type { Comparison } from '@/lib/compare/comparison';
import { reader } from '@/lib/store/database';
import { readAssessment, readRevision } from '@/lib/store/designs/revisions';
import type { JudgedRevision } from '../designs/judged';
import type { DesignContext } from '../use-case';
import type { ChangedView } from '../views/changed';
import type { SheetReading } from './reading';

/** Revisions and assessments are never changed, so what was once worked out of two of them stays true. */
const known = new Map<string, ChangedView>();
const most = 256;

/** @param previous the revision before; undefined for the first, which changed nothing */
export async function changedSince(
  { design }: DesignContext,
  previous: JudgedRevision | undefined,
  { revision, assessment, shown }: Pick<SheetReading, 'revision' | 'assessment' | 'shown'>,
): Promise<ChangedView | null> {
  if (previous === undefined) return null;
  const key = [previous.row.assessmentId, revision.revisionId, shown.hash].join(' ');
  const kept = known.get(key);
  if (kept !== undefined) return kept;
  const db = reader();
  const [before, judged] = await Promise.all([
    readRevision(db, design.designId, previous.row.letter),
    readAssessment(db, previous.row.revisionId),
  ]);
  if (before === null || judged === null) return null;
  const whole = compare(
    { document: before.document, assessment: judged.result },
    { document: revision.document, assessment },
  );
  const view = digest(previous.row.letter, whole);
  if (known.size >= most) known.delete(known.keys().next().value ?? '');
  known.set(key, view);
  return view;
}

/** What a sheet says of a comparison; the whole stands on a page of its own. */
function digest(since: string, c: Comparison): ChangedView {
  return {
    since,
    fields: c.fields,
    items: c.items,
    headlineBefore: c.headlineBefore,
    headlineAfter: c.headlineAfter,
    // A check that comes new and falls short has crossed nothing, and matters as much.
    checks: c.checks.filter((k) => k.crossed || (k.statusBefore === null && k.statusAfter === 'below')),
    raised: c.raised.length,
    cleared: c.cleared.length,
    sameMethod: c.methodBefore === c.methodAfter,
  };
}

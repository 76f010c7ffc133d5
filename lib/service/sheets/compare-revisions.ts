// Two revisions of a design side by side, or a revision and the draft as it stands.
import { may } from '@/lib/access/policy';
import { assess } from '@/lib/assess/assess';
import type { Assessment } from '@/lib/assess/assessment';
import { compare } from '@/lib/compare/compare';
import { changedCurves, changedShares } from '@/lib/compare/curves';
import type { Design } from '@/lib/design/document';
import { reader } from '@/lib/store/database';
import { readDraft } from '@/lib/store/designs/drafts';
import { readAssessment, readRevision } from '@/lib/store/designs/revisions';
import { readRecord } from '@/lib/store/review/record';
import type { Contract } from '../contract';
import { designHead } from '../designs/head';
import { idsOf, judgeRecord, revisionMark } from '../designs/judged';
import * as inputs from '../inputs/designs';
import { peopleOf } from '../people';
import { done, type Result, refused } from '../result';
import { type DesignContext, designCase } from '../use-case';
import type { SideView } from '../views/compare';

export const compareRevisions: Contract['compareRevisions'] = designCase(
  'design.read',
  inputs.compareRevisions,
  async (context, input) => {
    const [before, after] = await Promise.all([
      revisionSide(context, input.before),
      input.after === 'draft' ? draftSide(context) : revisionSide(context, input.after),
    ]);
    if (!before.ok) return before;
    if (!after.ok) return after;
    const db = reader();
    const record = await readRecord(db, [context.design.designId], 'all');
    const people = await peopleOf(db, idsOf(record));
    return done({
      design: designHead(context),
      before: before.value.side,
      after: after.value.side,
      comparison: compare(before.value, after.value),
      curves: changedCurves(before.value.assessment, after.value.assessment),
      shares: changedShares(before.value.assessment, after.value.assessment),
      sameMethod: before.value.side.method === after.value.side.method,
      revisions: judgeRecord(record).map((j) => revisionMark(j, people)),
    });
  },
);

interface Side {
  readonly side: SideView;
  readonly document: Design;
  readonly assessment: Assessment;
}

async function revisionSide({ design }: DesignContext, letter: string): Promise<Result<Side>> {
  const db = reader();
  const revision = await readRevision(db, design.designId, letter);
  const assessment = revision === null ? null : await readAssessment(db, revision.id);
  if (revision === null || assessment === null) return refused('revision.notFound');
  const { documentHash, publishedAt, document } = revision;
  const side = { letter, at: publishedAt.toISOString(), documentHash, method: assessment.method };
  return done({ side, document, assessment: assessment.result });
}

async function draftSide({ design, role }: DesignContext): Promise<Result<Side>> {
  if (!may(role, 'draft.read')) return refused('viewer.role');
  const draft = await readDraft(reader(), design.designId);
  const { document } = draft.content;
  const assessment = assess(document, { sheet: false });
  const { documentHash, updatedAt } = draft;
  const side = { letter: 'draft', at: updatedAt.toISOString(), documentHash, method: assessment.method };
  return done({ side, document, assessment });
}

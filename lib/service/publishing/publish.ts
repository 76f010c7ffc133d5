// Publishing the draft as the next revision, with its assessment, in one transaction.
import { hashOf } from '@/lib/design/canonical';
import { pendingProblems } from '@/lib/design/edit';
import { letterOf } from '@/lib/review/letters';
import { lockDesign } from '@/lib/store/designs/access';
import { withClubCoupons } from '@/lib/store/designs/coupons';
import { lockDraft } from '@/lib/store/designs/drafts';
import { createAssessment, createRevision, readRevision } from '@/lib/store/designs/revisions';
import { appendEvent } from '@/lib/store/ledger';
import { change } from '../change';
import type { Contract } from '../contract';
import { draftNow } from '../drafts/views';
import * as inputs from '../inputs/designs';
import { done, refused } from '../result';
import { designCase } from '../use-case';
import { assessed } from './assessed';

export const publish: Contract['publish'] = designCase(
  'revision.publish',
  inputs.publish,
  async ({ viewer, design }, input) =>
    change(async (tx) => {
      const { revisionCount } = await lockDesign(tx, design.designId);
      const draft = await lockDraft(tx, design.designId);
      if (draft.version !== input.baseVersion) return refused('draft.stale', { detail: draftNow(draft) });
      if (Object.keys(draft.content.pending).length > 0)
        return refused('publish.pending', {
          fields: { ...draft.content.pending, ...pendingProblems(draft.content) },
        });
      const document = await withClubCoupons(tx, design.clubId, draft.content.document);
      const documentHash = hashOf(document);
      const previous = await readRevision(tx, design.designId);
      // A previous revision of an older document version says the same in other bytes.
      if (previous !== null && hashOf(previous.document) === documentHash)
        return refused('publish.unchanged');
      const ordinal = revisionCount + 1;
      const letter = letterOf(ordinal);
      const publishedAt = new Date();
      const revision = await createRevision(tx, {
        designId: design.designId,
        ordinal,
        letter,
        document,
        documentHash,
        changeNote: input.changeNote,
        authorId: viewer.userId,
        hands: [...new Set([design.authorId, ...draft.hands, viewer.userId])],
        publishedAt,
      });
      const assessment = assessed(document);
      await createAssessment(tx, { revisionId: revision.id, madeAt: publishedAt, ...assessment });
      await appendEvent(tx, {
        clubId: design.clubId,
        actorId: viewer.userId,
        kind: 'revision.published',
        subject: `${design.number} ${letter}`,
        data: {
          letter,
          documentHash,
          assessmentHash: assessment.hash,
          method: assessment.result.method,
          changeNote: input.changeNote,
        },
      });
      return done({ letter });
    }),
);

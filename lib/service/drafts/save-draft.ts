// Saving edits to a draft. The edits are applied here, to the draft as it stands; an older base is refused, with the
// draft as it is now, so that what was typed can be put on top of it.

import { hashOf } from '@/lib/design/canonical';
import { applyEdit, type DraftContent, pendingProblems } from '@/lib/design/edit';
import { withClubCoupons } from '@/lib/store/designs/coupons';
import { keepDraft, lockDraft } from '@/lib/store/designs/drafts';
import { appendEvent } from '@/lib/store/ledger';
import { change } from '../change';
import type { Contract } from '../contract';
import * as inputs from '../inputs/designs';
import { done, refused } from '../result';
import { designCase } from '../use-case';
import { draftNow } from './views';

/** Texts that may wait at once: far above what a person leaves unfinished, far below what would fill the disk. */
const mostPending = 200;

export const saveDraft: Contract['saveDraft'] = designCase(
  'draft.edit',
  inputs.saveDraft,
  async ({ viewer, design }, input) =>
    change(async (tx) => {
      const draft = await lockDraft(tx, design.designId);
      if (draft.version !== input.baseVersion) return refused('draft.stale', { detail: draftNow(draft) });
      const document = await withClubCoupons(tx, design.clubId, draft.content.document);
      let content: DraftContent = { ...draft.content, document };
      const outcomes: (string | null)[] = [];
      for (const edit of input.edits) {
        const edited = applyEdit(content, edit);
        content = edited.content;
        outcomes.push(edited.problem);
      }
      if (Object.keys(content.pending).length > mostPending) return refused('draft.full');
      const at = new Date();
      const documentHash = hashOf(content.document);
      const kept = { content, documentHash, byId: viewer.userId, at };
      if (!(await keepDraft(tx, design.designId, input.baseVersion, kept)))
        throw new Error('A locked draft changed its version.');
      // A draft saves itself every few seconds of typing. What counts is who has a hand in it: that is told once.
      if (!draft.hands.includes(viewer.userId)) {
        await appendEvent(tx, {
          clubId: design.clubId,
          actorId: viewer.userId,
          kind: 'draft.hand',
          subject: design.number,
          data: { version: input.baseVersion + 1 },
        });
      }
      return done({
        version: input.baseVersion + 1,
        updatedAt: at.toISOString(),
        content,
        problems: pendingProblems(content),
        outcomes,
      });
    }),
);

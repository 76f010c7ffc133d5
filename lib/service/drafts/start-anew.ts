// Putting a published revision in the place of the draft: what was in the draft is given up, on purpose.

import { hashOf } from '@/lib/design/canonical';
import { withClubCoupons } from '@/lib/store/designs/coupons';
import { keepDraft, lockDraft } from '@/lib/store/designs/drafts';
import { readRevision } from '@/lib/store/designs/revisions';
import { appendEvent } from '@/lib/store/ledger';
import { change } from '../change';
import type { Contract } from '../contract';
import * as inputs from '../inputs/designs';
import { done, refused } from '../result';
import { designCase } from '../use-case';
import { draftNow } from './views';

export const replaceDraftFromRevision: Contract['replaceDraftFromRevision'] = designCase(
  'draft.edit',
  inputs.replaceDraftFromRevision,
  async ({ viewer, design }, input) =>
    change(async (tx) => {
      const draft = await lockDraft(tx, design.designId);
      if (draft.version !== input.baseVersion) return refused('draft.stale', { detail: draftNow(draft) });
      const revision = await readRevision(tx, design.designId, input.letter);
      if (revision === null) return refused('revision.notFound');
      const document = await withClubCoupons(tx, design.clubId, revision.document);
      const content = { document, pending: {} };
      const at = new Date();
      const documentHash = hashOf(document);
      const kept = { content, documentHash, byId: viewer.userId, at };
      if (!(await keepDraft(tx, design.designId, input.baseVersion, kept)))
        throw new Error('A locked draft changed its version.');
      await appendEvent(tx, {
        clubId: design.clubId,
        actorId: viewer.userId,
        kind: 'draft.replaced',
        subject: design.number,
        data: {
          version: input.baseVersion + 1,
          from: input.letter,
          documentHash,
          gaveUp: draft.documentHash,
        },
      });
      return done({
        version: input.baseVersion + 1,
        updatedAt: at.toISOString(),
        content,
        problems: {},
        outcomes: [],
      });
    }),
);

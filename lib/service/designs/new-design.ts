// A new design from a starter: it gets the next number of its club and a draft.
import { hashOf } from '@/lib/design/canonical';
import { starterKeys, starters } from '@/lib/design/starters/registry';
import { withClubCoupons } from '@/lib/store/designs/coupons';
import { createDesign } from '@/lib/store/designs/designs';
import { createDraft } from '@/lib/store/designs/drafts';
import { appendEvent } from '@/lib/store/ledger';
import { change } from '../change';
import type { Contract } from '../contract';
import * as inputs from '../inputs/designs';
import { done, refused } from '../result';
import { clubCase } from '../use-case';

export const newDesign: Contract['newDesign'] = clubCase(
  'design.create',
  inputs.newDesign,
  async ({ viewer, clubId }, input) => {
    const key = starterKeys.find((k) => k === input.starter);
    if (key === undefined) return refused('starter.notFound');
    return change(async (tx) => {
      const document = await withClubCoupons(tx, clubId, starters[key].document);
      const documentHash = hashOf(document);
      const at = new Date();
      const design = await createDesign(tx, { clubId, title: input.title, authorId: viewer.userId });
      await createDraft(tx, design.id, {
        content: { document, pending: {} },
        documentHash,
        byId: viewer.userId,
        at,
      });
      await appendEvent(tx, {
        clubId,
        actorId: viewer.userId,
        kind: 'design.opened',
        subject: design.number,
        data: { title: input.title, starter: key, documentHash },
      });
      return done({ number: design.number });
    });
  },
);

// Opening the draft of a design for reading or editing.
import { may } from '@/lib/access/policy';
import { assess } from '@/lib/assess/assess';
import { letterOf } from '@/lib/review/letters';
import { reader } from '@/lib/store/database';
import { withClubCoupons } from '@/lib/store/designs/coupons';
import { readDraft } from '@/lib/store/designs/drafts';
import { readRecord } from '@/lib/store/review/record';
import type { Contract } from '../contract';
import { designHead } from '../designs/head';
import { idsOf, judgeRecord, revisionMark } from '../designs/judged';
import * as inputs from '../inputs/designs';
import { peopleOf } from '../people';
import { done } from '../result';
import { designCase } from '../use-case';
import { draftNow } from './views';

export const openDraft: Contract['openDraft'] = designCase(
  'draft.read',
  inputs.openDraft,
  async (context) => {
    const { design, role, viewer } = context;
    const db = reader();
    const kept = await readDraft(db, design.designId);
    const document = await withClubCoupons(db, design.clubId, kept.content.document);
    const draft = { ...kept, content: { ...kept.content, document } };
    const record = await readRecord(db, [design.designId], 'latest');
    const people = await peopleOf(db, idsOf(record));
    const latest = judgeRecord(record)[0] ?? null;
    const mayEdit = may(role, 'draft.edit');
    const hadHand = viewer.userId === design.authorId || draft.hands.includes(viewer.userId);
    return done({
      design: designHead(context),
      ...draftNow(draft),
      assessment: assess(document, { sheet: false }),
      ahead:
        latest === null ||
        latest.row.documentHash !== draft.documentHash ||
        document !== kept.content.document,
      latest: latest === null ? null : revisionMark(latest, people),
      nextLetter: letterOf((latest?.row.ordinal ?? 0) + 1),
      mayEdit,
      mayPublish: may(role, 'revision.publish'),
      warning:
        mayEdit && !hadHand
          ? 'If you change this draft you have a hand in the design, and can no longer sign for it.'
          : null,
    });
  },
);

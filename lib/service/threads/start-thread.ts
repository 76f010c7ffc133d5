// Opening a thread at one place of a revision.
import { reader } from '@/lib/store/database';
import { lockDesign } from '@/lib/store/designs/access';
import { readAssessment, readRevision } from '@/lib/store/designs/revisions';
import { appendEvent } from '@/lib/store/ledger';
import { createThread } from '@/lib/store/review/threads';
import { change } from '../change';
import type { Contract } from '../contract';
import * as inputs from '../inputs/review';
import { done, refused } from '../result';
import { rationed } from '../sign-in/slowed';
import { designCase } from '../use-case';
import { anchorLabel } from './anchors';

export const startThread: Contract['startThread'] = designCase(
  'thread.write',
  inputs.startThread,
  async ({ viewer, design }, input) => {
    const revision = await readRevision(reader(), design.designId, input.letter);
    const assessment = revision === null ? null : await readAssessment(reader(), revision.id);
    if (revision === null || assessment === null) return refused('revision.notFound');
    const label = anchorLabel(input.anchor, revision.document, assessment.result);
    if (label === null) return refused('thread.anchor');
    return rationed({ pace: 'remark', parts: [viewer.userId] }, () =>
      change(async (tx) => {
        const number = (await lockDesign(tx, design.designId)).threadCount + 1;
        const thread = await createThread(
          tx,
          number,
          {
            designId: design.designId,
            revisionId: revision.id,
            anchorKind: input.anchor.kind,
            anchorPath: input.anchor.path,
            anchorLabel: label,
            openedById: viewer.userId,
            openedAt: new Date(),
          },
          input.text,
        );
        await appendEvent(tx, {
          clubId: design.clubId,
          actorId: viewer.userId,
          kind: 'thread.opened',
          subject: `${design.number} ${input.letter}`,
          data: { thread: number, anchor: `${input.anchor.kind}:${input.anchor.path}`, text: input.text },
        });
        return done({ threadId: thread.id, number });
      }),
    );
  },
);

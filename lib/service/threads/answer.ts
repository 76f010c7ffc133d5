// Answering in a thread, settling it and opening it again.
import { maySettle } from '@/lib/review/threads';
import { reader } from '@/lib/store/database';
import { numberOfThread } from '@/lib/store/designs/access';
import { readDraft } from '@/lib/store/designs/drafts';
import { appendEvent } from '@/lib/store/ledger';
import { addRemark, lockThread, setThreadState } from '@/lib/store/review/threads';
import { change } from '../change';
import type { Contract } from '../contract';
import * as inputs from '../inputs/review';
import { done, refused } from '../result';
import { rationed } from '../sign-in/slowed';
import { type DesignContext, partCase } from '../use-case';

interface Answer {
  readonly threadId: string;
  readonly text: string;
}

const threadDesign = (input: Answer) => numberOfThread(reader(), input.threadId);

export const reply: Contract['reply'] = partCase(
  'thread.write',
  inputs.reply,
  threadDesign,
  'thread.notFound',
  (context, input) => answer(context, input, 'replied'),
);

export const resolveThread: Contract['resolveThread'] = partCase(
  'thread.write',
  inputs.resolveThread,
  threadDesign,
  'thread.notFound',
  (context, input) => answer(context, input, 'resolved'),
);

export const reopenThread: Contract['reopenThread'] = partCase(
  'thread.write',
  inputs.reopenThread,
  threadDesign,
  'thread.notFound',
  (context, input) => answer(context, input, 'reopened'),
);

type Act = 'replied' | 'resolved' | 'reopened';

function answer(context: DesignContext, input: Answer, act: Act) {
  return rationed({ pace: 'remark', parts: [context.viewer.userId] }, () => kept(context, input, act));
}

function kept({ viewer, design, role }: DesignContext, input: Answer, act: Act) {
  return change(async (tx) => {
    const thread = await lockThread(tx, design.designId, input.threadId);
    if (thread === null) return refused('thread.notFound');
    if (thread.state !== (act === 'reopened' ? 'resolved' : 'open')) return refused('thread.state');
    if (act === 'resolved') {
      const { hands } = await readDraft(tx, design.designId);
      const hadHand = design.authorId === viewer.userId || hands.includes(viewer.userId);
      if (!maySettle({ userId: viewer.userId, role, hadHand }, thread.openedById))
        return refused('thread.opener');
    }
    const { text } = input;
    const remark = await addRemark(tx, {
      threadId: thread.id,
      byId: viewer.userId,
      at: new Date(),
      text,
      act,
    });
    if (act !== 'replied') await setThreadState(tx, thread.id, act === 'resolved' ? 'resolved' : 'open');
    await appendEvent(tx, {
      clubId: design.clubId,
      actorId: viewer.userId,
      kind: `thread.${act}`,
      subject: design.number,
      data: { thread: thread.number, text },
    });
    return done({ remarkId: remark.id });
  });
}

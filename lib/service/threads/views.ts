// Threads as pages see them.
import { may } from '@/lib/access/policy';
import { maySettle } from '@/lib/review/threads';
import type { ThreadRow } from '@/lib/store/review/record';
import type { RemarkRow } from '@/lib/store/review/threads';
import type { People } from '../people';
import type { DesignContext } from '../use-case';
import type { ThreadView } from '../views/thread';

/** Open ones first, then by number; `hadHand` is the viewer's part in the design. */
export function threadViews(
  threads: readonly ThreadRow[],
  remarks: readonly RemarkRow[],
  context: DesignContext,
  hadHand: boolean,
  people: People,
): ThreadView[] {
  const writes = may(context.role, 'thread.write');
  const viewer = { userId: context.viewer.userId, role: context.role, hadHand };
  return threads
    .toSorted((a, b) => Number(a.state !== 'open') - Number(b.state !== 'open') || a.number - b.number)
    .map((t) => ({
      threadId: t.id,
      number: t.number,
      anchor: { kind: t.anchorKind, path: t.anchorPath, label: t.anchorLabel },
      raisedOn: t.letter,
      state: t.state,
      openedBy: people(t.openedById),
      openedAt: t.openedAt.toISOString(),
      remarks: remarks
        .filter((r) => r.threadId === t.id)
        .map((r) => ({
          remarkId: r.id,
          by: people(r.byId),
          at: r.at.toISOString(),
          text: r.text,
          act: r.act,
        })),
      mayReply: writes && t.state === 'open',
      mayResolve: writes && t.state === 'open' && maySettle(viewer, t.openedById),
      mayReopen: writes && t.state === 'resolved',
    }));
}

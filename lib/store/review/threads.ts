// Threads and their remarks.
import type { AnchorKind } from '@/lib/review/threads';
import type { Database } from '../database';

export interface RemarkRow {
  readonly id: string;
  readonly threadId: string;
  readonly byId: string;
  readonly at: Date;
  readonly text: string;
  readonly act: 'opened' | 'replied' | 'resolved' | 'reopened';
}

export interface ThreadToOpen {
  readonly designId: string;
  readonly revisionId: string;
  readonly anchorKind: AnchorKind;
  readonly anchorPath: string;
  readonly anchorLabel: string;
  readonly openedById: string;
  readonly openedAt: Date;
}

/** Opens a thread with the next number of its design, whose row must be locked. */
export async function createThread(
  tx: Database,
  number: number,
  thread: ThreadToOpen,
  text: string,
): Promise<{ id: string }> {
  const created = await tx.thread.create({ data: { ...thread, number }, select: { id: true } });
  await tx.$executeRaw`UPDATE design SET thread_count = ${number} WHERE id = ${thread.designId}::uuid`;
  await addRemark(tx, {
    threadId: created.id,
    byId: thread.openedById,
    at: thread.openedAt,
    text,
    act: 'opened',
  });
  return created;
}

export function addRemark(tx: Database, remark: Omit<RemarkRow, 'id'>): Promise<{ id: string }> {
  return tx.remark.create({ data: remark, select: { id: true } });
}

export interface LockedThread {
  readonly id: string;
  readonly number: number;
  readonly state: 'open' | 'resolved';
  readonly openedById: string;
}

/** Locks the thread until the end of the transaction; null when the design has no such thread. */
export async function lockThread(
  tx: Database,
  designId: string,
  threadId: string,
): Promise<LockedThread | null> {
  const rows = await tx.$queryRaw<LockedThread[]>`
    SELECT id, number, state::text AS state, opened_by_id AS "openedById" FROM thread
    WHERE id = ${threadId}::uuid AND design_id = ${designId}::uuid FOR NO KEY UPDATE`;
  return rows[0] ?? null;
}

export async function setThreadState(tx: Database, id: string, state: 'open' | 'resolved'): Promise<void> {
  await tx.thread.update({ where: { id }, data: { state } });
}

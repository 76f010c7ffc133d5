// The ledger of each club: appending in the transaction of the change itself, reading, and following the chain.

import type { Prisma } from '@/generated/prisma/client';
import { type Break, ChainReader, entryHash } from '@/lib/review/ledger';
import type { LedgerKind } from '@/lib/review/ledger-kinds';
import type { Database } from './database';

export interface NewEvent {
  readonly clubId: string;
  readonly actorId: string | null;
  readonly kind: LedgerKind;
  /** What it is about, e.g. `QS-014 B` or a person's id. */
  readonly subject: string;
  /** Plain JSON, small. */
  readonly data: Prisma.InputJsonObject;
}

/**
 * Appends an event; call it last in a transaction. It locks the club's row until the end of the transaction, so that
 * numbers have no gaps and each hash follows the one before.
 */
export async function appendEvent(tx: Database, event: NewEvent): Promise<{ at: Date; seq: number }> {
  const heads = await tx.$queryRaw<{ ledgerSeq: number; ledgerHash: string }[]>`
    SELECT ledger_seq AS "ledgerSeq", ledger_hash AS "ledgerHash" FROM club
    WHERE id = ${event.clubId}::uuid FOR NO KEY UPDATE`;
  const head = heads[0];
  if (head === undefined) throw new Error('A ledger event needs a club.');
  const seq = head.ledgerSeq + 1;
  const at = new Date();
  const { kind, subject, data, actorId, clubId } = event;
  const hash = entryHash({ seq, at: at.toISOString(), actor: actorId, kind, subject, data }, head.ledgerHash);
  await tx.$executeRaw`
    INSERT INTO ledger_event (club_id, seq, at, actor_id, kind, subject, data, previous_hash, hash)
    VALUES (${clubId}::uuid, ${seq}, ${at}, ${actorId}::uuid, ${kind}, ${subject}, ${JSON.stringify(data)}::jsonb,
      ${head.ledgerHash}, ${hash})`;
  await tx.$executeRaw`UPDATE club SET ledger_seq = ${seq}, ledger_hash = ${hash} WHERE id = ${clubId}::uuid`;
  return { at, seq };
}

export interface KeptEvent {
  readonly seq: number;
  readonly at: Date;
  readonly actorId: string | null;
  readonly kind: string;
  readonly subject: string;
  readonly data: unknown;
  readonly previousHash: string;
  readonly hash: string;
}

/** Events before a number, newest first. */
export function eventsBefore(
  db: Database,
  clubId: string,
  before: number | null,
  limit: number,
): Promise<KeptEvent[]> {
  return db.ledgerEvent.findMany({
    where: { clubId, ...(before === null ? {} : { seq: { lt: before } }) },
    orderBy: { seq: 'desc' },
    take: limit,
  });
}

export interface LedgerHead {
  readonly clubId: string;
  readonly code: string;
  readonly seq: number;
  readonly hash: string;
}

/** Heads of the ledgers of all clubs, or of one. */
export async function ledgerHeads(db: Database, code?: string): Promise<LedgerHead[]> {
  const clubs = await db.club.findMany({
    where: code === undefined ? {} : { code },
    select: { id: true, code: true, ledgerSeq: true, ledgerHash: true },
    orderBy: { code: 'asc' },
  });
  return clubs.map((c) => ({ clubId: c.id, code: c.code, seq: c.ledgerSeq, hash: c.ledgerHash }));
}

/**
 * Reads a ledger from its start in pieces and says where it does not fit; null when it is whole. Call it in a
 * transaction that sees one state (`inSnapshot`), or an event appended meanwhile looks like a wrong end.
 */
export async function findBreak(db: Database, head: LedgerHead): Promise<Break | null> {
  const chain = new ChainReader(head.code);
  const piece = 1000;
  for (let last = -1; ; ) {
    const events = await db.ledgerEvent.findMany({
      where: { clubId: head.clubId, seq: { gt: last } },
      orderBy: { seq: 'asc' },
      take: piece,
    });
    for (const e of events) chain.read({ ...e, at: e.at.toISOString(), actor: e.actorId });
    const end = events.at(-1);
    if (end === undefined || events.length < piece) break;
    last = end.seq;
  }
  return chain.finish(head);
}

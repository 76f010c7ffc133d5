// The ledger of a club, page by page, newest first.
import { ledgerLabel } from '@/lib/review/ledger-kinds';
import { reader } from '@/lib/store/database';
import { eventsBefore, ledgerHeads } from '@/lib/store/ledger';
import type { Contract } from '../contract';
import * as inputs from '../inputs/review';
import { peopleOf } from '../people';
import { done } from '../result';
import { clubCase } from '../use-case';

const rowsOnPage = 100;

export const ledgerPage: Contract['ledgerPage'] = clubCase(
  'ledger.read',
  inputs.ledgerPage,
  async ({ clubId, code, clubName }, { before }) => {
    const db = reader();
    const [events, heads] = await Promise.all([
      eventsBefore(db, clubId, before ?? null, rowsOnPage),
      ledgerHeads(db, code),
    ]);
    const people = await peopleOf(
      db,
      events.flatMap((e) => (e.actorId === null ? [] : [e.actorId])),
    );
    const head = heads[0];
    const last = events.at(-1);
    return done({
      club: { code, name: clubName },
      rows: events.map((e) => ({
        seq: e.seq,
        at: e.at.toISOString(),
        actor: e.actorId === null ? null : people(e.actorId),
        kind: e.kind,
        label: ledgerLabel(e.kind),
        subject: e.subject,
        data: e.data,
        hash: e.hash,
      })),
      older: last === undefined || last.seq === 1 ? null : last.seq,
      head: head === undefined ? null : { seq: head.seq, hash: head.hash },
    });
  },
);

// The ledger: every change is in it, in the same transaction, and nobody changes it unseen.

import type pg from 'pg';
import { beforeEach, describe, expect, it } from 'vitest';
import { entryHash } from '@/lib/review/ledger';
import { newDesign } from '@/lib/service/designs/new-design';
import { health } from '@/lib/service/ledger/health';
import { ledgerPage } from '@/lib/service/ledger/ledger-page';
import { verifyLedger } from '@/lib/service/ledger/verify-ledger';
import type { Viewer } from '@/lib/service/viewer';
import { withSql } from '../store/sql';
import { club, must } from './cast';

let code = '';
let steward: Viewer;
let clubs = 0;

beforeEach(async () => {
  code = `L${String.fromCharCode(65 + clubs++)}`;
  steward = await club(code);
  for (let i = 0; i < 5; i++)
    must(await newDesign(steward, { club: code, starter: 'turntable', title: `Nr ${i}` }));
});

const verdict = async () => (await verifyLedger({ club: code }))[0];

/** As a database owner would who wants to rewrite the past. */
const tamper = (query: string, values: unknown[] = []) =>
  withSql(async (sql: pg.Client) => {
    await sql.query('ALTER TABLE ledger_event DISABLE TRIGGER USER');
    const { rowCount } = await sql.query(
      query.replaceAll('$club', `(SELECT id FROM club WHERE code = '${code}')`),
      values,
    );
    await sql.query('ALTER TABLE ledger_event ENABLE TRIGGER USER');
    expect(rowCount).toBeGreaterThan(0);
  });

describe('the ledger', () => {
  it('is whole, and the page shows it newest first with people and words', async () => {
    expect(await verdict()).toMatchObject({ club: code, events: 6, intact: true, broken: null });
    const page = must(await ledgerPage(steward, { club: code }));
    expect(page.rows.map((r) => r.seq)).toEqual([6, 5, 4, 3, 2, 1]);
    expect(page.rows.at(-1)).toMatchObject({ label: 'Club founded', actor: { name: `Steward of ${code}` } });
    expect(page.head).toEqual({ seq: 6, hash: page.rows[0]?.hash });
    expect(must(await ledgerPage(steward, { club: code, before: 3 })).rows.map((r) => r.seq)).toEqual([2, 1]);
  });

  it('shows a changed event', async () => {
    await tamper(
      `UPDATE ledger_event SET data = data || '{"title":"Other"}' WHERE club_id = $club AND seq = 3`,
    );
    expect((await verdict())?.broken).toEqual({
      seq: 3,
      sentence: 'Event 3 does not say what it said when it was written.',
    });
  });

  it('shows another actor and another time', async () => {
    await tamper(`UPDATE ledger_event SET actor_id = NULL WHERE club_id = $club AND seq = 2`);
    expect((await verdict())?.broken?.seq).toBe(2);
  });

  it('shows a changed event that was given the hash it would have', async () => {
    const page = must(await ledgerPage(steward, { club: code }));
    const third = page.rows.find((r) => r.seq === 3);
    const second = page.rows.find((r) => r.seq === 2);
    if (third === undefined || second === undefined) throw new Error('no events');
    const { seq, at, kind, subject } = third;
    const data = { title: 'Other' };
    const hash = entryHash({ seq, at, actor: third.actor?.userId ?? null, kind, subject, data }, second.hash);
    await tamper(`UPDATE ledger_event SET data = $1, hash = $2 WHERE club_id = $club AND seq = 3`, [
      data,
      hash,
    ]);
    expect((await verdict())?.broken?.seq).toBe(4);
  });

  it('shows a removed event, in the middle and at the end', async () => {
    await tamper(`DELETE FROM ledger_event WHERE club_id = $club AND seq = 6`);
    expect((await verdict())?.broken?.sentence).toBe('Events from 6 to 6 are missing at the end.');
    await tamper(`DELETE FROM ledger_event WHERE club_id = $club AND seq = 4`);
    expect((await verdict())?.broken).toEqual({ seq: 4, sentence: 'Event 4 is missing.' });
  });

  it('of one club says nothing about another', async () => {
    await tamper(`UPDATE ledger_event SET kind = 'x' WHERE club_id = $club AND seq = 1`);
    const others = (await verifyLedger()).filter((v) => v.club !== code);
    expect((await verdict())?.intact).toBe(false);
    expect(others.some((v) => v.intact)).toBe(true);
  });

  it('has no gaps when twenty write at once', async () => {
    const one = (i: number) =>
      newDesign(steward, { club: code, starter: 'turntable', title: `At once ${i}` });
    await Promise.all(Array.from({ length: 20 }, (_, i) => one(i)));
    expect(await verdict()).toMatchObject({ events: 26, intact: true });
  });
});

it('the service is well while the database answers', async () => {
  expect(await health()).toMatchObject({ database: 'answers' });
});

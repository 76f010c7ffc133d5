// The command line follows the ledger's chain in a real database, and finds what was changed behind the service's back.
import pg from 'pg';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { ledgerStart } from '@/lib/review/ledger';
import { inTransaction } from '@/lib/store/database';
import { appendEvent } from '@/lib/store/ledger';
import { pawl } from '../../cli/command-line';

const client = new pg.Client({ connectionString: process.env.DATABASE_URL });
const verify = (...more: string[]) => pawl(['ledger', 'verify', ...more]);

async function club(code: string, events: number): Promise<void> {
  const made = await client.query<{ id: string }>(
    'INSERT INTO club (id, code, name, ledger_hash) VALUES (gen_random_uuid(), $1, $1, $2) RETURNING id',
    [code, ledgerStart(code)],
  );
  const clubId = made.rows[0]?.id ?? '';
  for (let i = 1; i <= events; i++) {
    const event = { clubId, actorId: null, kind: 'club.founded', subject: code, data: { i } } as const;
    await inTransaction((tx) => appendEvent(tx, event));
  }
}

beforeAll(() => client.connect());
afterAll(() => client.end());

it('says so when there is no club yet', () => {
  expect(verify()).toEqual({ code: 2, out: '', err: 'There is no club yet.\n' });
});

it('finds the chains of all clubs unbroken as the service wrote them', async () => {
  await club('AX', 3);
  await club('BX', 1);
  const run = verify();
  expect([run.code, run.err]).toEqual([0, '']);
  expect(run.out).toMatch(
    /^AX: 3 events, unbroken\. Last hash: [0-9a-f]{64}\nBX: 1 event, unbroken\. Last hash: [0-9a-f]{64}\n$/,
  );
});

it('ends with 1 and names the event that no longer says what it said', async () => {
  // What the database refuses to the service, someone with the superuser's rights can still do.
  await client.query('ALTER TABLE ledger_event DISABLE TRIGGER USER');
  await client.query(`UPDATE ledger_event SET data = '{"i": 20}' WHERE subject = 'AX' AND seq = 2`);
  await client.query('ALTER TABLE ledger_event ENABLE TRIGGER USER');
  expect(verify('--club', 'AX')).toEqual({
    code: 1,
    out: 'AX: 3 events, broken at event 2: Event 2 does not say what it said when it was written.\n',
    err: '',
  });
  expect(verify('--club', 'BX').code).toBe(0);
  expect(verify('--club', 'CX')).toEqual({ code: 2, out: '', err: 'There is no club “CX”.\n' });
});

// What is on record cannot be changed or removed, and what contradicts itself cannot get in.
import { beforeAll, describe, expect, it } from 'vitest';
import { enterCouponTest, withdrawCouponTest } from '@/lib/service/coupons/coupon-tests';
import { withdrawSignature } from '@/lib/service/signing/withdraw-signature';
import { reply } from '@/lib/service/threads/answer';
import { startThread } from '@/lib/service/threads/start-thread';
import { reader } from '@/lib/store/database';
import { type Cast, cast, must } from '../service/cast';
import { clearTheWay, published, signs } from '../service/story';
import { count, withSql } from './sql';

const facts = [
  'revision',
  'assessment',
  'remark',
  'disposition',
  'sign_off',
  'sign_off_void',
  'ledger_event',
  'coupon_test',
  'coupon_test_void',
];

let people: Cast;
let design: string;

beforeAll(async () => {
  people = await cast('QS');
  design = await published(people.author, 'QS');
  await clearTheWay(people.officer, design, 'A', 'benchSpin');
  const { signOffId } = must(await signs(people.member, design, 'A', 'benchSpin'));
  must(await withdrawSignature(people.member, { signOffId, reason: 'I had not seen the wiring.' }));
  const anchor = { kind: 'revision' as const, path: '' };
  const { threadId } = must(await startThread(people.member, { design, letter: 'A', anchor, text: 'Why?' }));
  const coupon = {
    material: 'petg_fdm',
    property: 'E_xy',
    mean: '1900',
    deviation: '60',
    count: '5',
  } as const;
  const test = { club: 'QS', ...coupon, process: 'Bench printer' };
  const { testId } = must(await enterCouponTest(people.member, test));
  must(await withdrawCouponTest(people.member, { club: 'QS', testId, reason: 'The spool was damp.' }));
  must(await reply(people.author, { threadId, text: 'Because.' }));
});

describe.each(facts)('a row of %s', (table) => {
  it('is there, and is neither changed nor removed nor emptied away', () =>
    withSql(async (sql) => {
      expect(await count(sql, `SELECT count(*) FROM ${table}`)).toBeGreaterThan(0);
      const { rows } = await sql.query(
        `SELECT column_name FROM information_schema.columns WHERE table_name = '${table}' AND table_schema = 'public' LIMIT 1`,
      );
      const column = rows[0].column_name;
      for (const attack of [
        `UPDATE ${table} SET ${column} = ${column}`,
        `DELETE FROM ${table}`,
        `TRUNCATE ${table} CASCADE`,
      ])
        await expect(sql.query(attack), attack).rejects.toMatchObject({ code: '55000' });
    }));
});

it('stops the service’s own client as it stops anyone', async () => {
  await expect(reader().remark.deleteMany()).rejects.toMatchObject({ code: 'P2039' });
});

describe('a signature written past the service', () => {
  const insert = (over: { signer?: string; document?: string; assessment?: string }) =>
    withSql((sql) =>
      sql.query(
        `INSERT INTO sign_off (id, revision_id, assessment_id, hold_point, signer_id, round, role_then, meaning,
           meaning_version, requirements_version, document_hash, assessment_hash, method, statement_hash, at)
         SELECT gen_random_uuid(), r.id, a.id, 'proofLoad', $1, 1, 'safetyOfficer', 'words', 1, 1,
           coalesce($2, r.document_hash), coalesce($3, a.hash), a.method, 'x', now()
         FROM revision r JOIN assessment a ON a.revision_id = r.id LIMIT 1`,
        [over.signer ?? people.officer.userId, over.document ?? null, over.assessment ?? null],
      ),
    );

  it('by someone who had a hand in the design is refused by the database', async () => {
    await expect(insert({ signer: people.author.userId })).rejects.toMatchObject({ code: '23514' });
  });

  it('over other content than the revision’s is refused by the database', async () => {
    await expect(insert({ document: 'f'.repeat(64) })).rejects.toMatchObject({ code: '23514' });
    await expect(insert({ assessment: 'f'.repeat(64) })).rejects.toMatchObject({ code: '23514' });
  });
});

it('knows no revision letter that drawings do not use', () =>
  withSql(async (sql) => {
    for (const letter of ['I', 'O', 'Q', 'S', 'X', 'Z', 'a', '']) {
      const copy = `INSERT INTO revision (id, design_id, ordinal, letter, document, document_hash, change_note, author_id, hands, published_at)
        SELECT gen_random_uuid(), design_id, 99, $1, document, document_hash, change_note, author_id, hands, published_at FROM revision LIMIT 1`;
      await expect(sql.query(copy, [letter]), letter).rejects.toMatchObject({ code: '23514' });
    }
  }));

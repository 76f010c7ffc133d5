// How many queries each page costs, and that the number does not grow with what the page shows.
import pg from 'pg';
import { beforeAll, expect, it, vi } from 'vitest';
import { clubShelf } from '@/lib/service/designs/shelf';
import { openDraft } from '@/lib/service/drafts/open-draft';
import { ledgerPage } from '@/lib/service/ledger/ledger-page';
import { members } from '@/lib/service/members/members';
import type { Result } from '@/lib/service/result';
import { compareRevisions } from '@/lib/service/sheets/compare-revisions';
import { revisionSheet } from '@/lib/service/sheets/revision-sheet';
import { viewerOf } from '@/lib/service/sign-in/viewer';
import { signingPage } from '@/lib/service/signing/signing-page';
import { startThread } from '@/lib/service/threads/start-thread';
import { type Cast, cast, must } from './cast';
import { clearTheWay, nextRevision, published, signs } from './story';

let people: Cast;
let design: string;

async function grow(): Promise<void> {
  design = await published(people.author, 'QS');
  for (const torque of ['4.1', '4.2', '4.3'])
    await nextRevision(people.author, design, 'duty.peakTorque', torque);
  await clearTheWay(people.officer, design, 'D', 'benchSpin');
  must(await signs(people.member, design, 'D', 'benchSpin'));
  const anchor = { kind: 'revision' as const, path: '' };
  for (const text of ['One?', 'Two?', 'Three?'])
    must(await startThread(people.member, { design, letter: 'D', anchor, text }));
}

beforeAll(async () => {
  people = await cast('QS');
  await grow();
});

/** Statements that reach Postgres while the work runs. */
async function queriesOf(work: () => Promise<Result<unknown>>): Promise<number> {
  const spy = vi.spyOn(pg.Client.prototype, 'query');
  try {
    must(await work());
    return spy.mock.calls.length;
  } finally {
    spy.mockRestore();
  }
}

const pages: readonly [string, number, () => Promise<Result<unknown>>][] = [
  ['the shelf', 7, () => clubShelf(people.officer, { club: 'QS' })],
  ['a sheet', 10, () => revisionSheet(people.officer, { design })],
  [
    'the signing page',
    10,
    () => signingPage(people.officer, { design, letter: 'D', holdPoint: 'proofLoad' }),
  ],
  ['a draft', 9, () => openDraft(people.author, { design })],
  ['a comparison', 10, () => compareRevisions(people.officer, { design, before: 'A', after: 'D' })],
  ['the members', 3, () => members(people.steward, { club: 'QS' })],
  ['the ledger', 4, () => ledgerPage(people.officer, { club: 'QS' })],
];

it.each(pages)('%s costs at most %i queries', async (_name, most, page) => {
  await page();
  const few = await queriesOf(page);
  expect(few).toBeLessThanOrEqual(most);
  // A spy that sees nothing would find every page cheap.
  expect(few).toBeGreaterThan(1);
});

it('none costs more when there are more designs, revisions and threads', async () => {
  // Each page is read once beforehand: what a revision changed is worked out once and kept.
  const counts = async () => {
    const queries = [];
    for (const [, , page] of pages) {
      await page();
      queries.push(await queriesOf(page));
    }
    return queries;
  };
  const before = await counts();
  await grow();
  expect(await counts()).toEqual(before);
});

it('the person of a session costs one', async () => {
  const spy = vi.spyOn(pg.Client.prototype, 'query');
  await viewerOf({ userId: people.member.userId, sessionVersion: 1 });
  expect(spy.mock.calls).toHaveLength(1);
  spy.mockRestore();
});

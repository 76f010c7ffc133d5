// The demo club is loaded through the use cases of the service, once, and stands as its stories say.
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { clubCoupons } from '@/lib/demo/coupons';
import { loadDemo } from '@/lib/demo/load';
import { club, people, personKeys } from '@/lib/demo/people';
import { closeService } from '@/lib/service/close';
import { clubShelf } from '@/lib/service/designs/shelf';
import { verifyLedger } from '@/lib/service/ledger/verify-ledger';
import { revisionSheet } from '@/lib/service/sheets/revision-sheet';
import { signIn } from '@/lib/service/sign-in/sign-in';
import { viewerOf } from '@/lib/service/sign-in/viewer';
import type { Viewer } from '@/lib/service/viewer';

const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'pawl-demo-test-'));
const note = path.join(folder, 'demo-sign-in.txt');
let odile: Viewer | null = null;

beforeAll(async () => {
  expect(await loadDemo(folder)).toBe(true);
  odile = await entering('odile');
}, 240_000);

afterAll(async () => {
  await closeService();
  fs.rmSync(folder, { recursive: true });
});

async function entering(key: keyof typeof people): Promise<Viewer | null> {
  const session = await signIn({ email: people[key].email, password: password(), address: 'test' });
  return session.ok ? viewerOf(session.value) : null;
}

function password(): string {
  return /password {2}(\S+)/.exec(fs.readFileSync(note, 'utf8'))?.[1] ?? '';
}

async function sheet(design: string, letter?: string) {
  const result = await revisionSheet(odile, letter === undefined ? { design } : { design, letter });
  if (!result.ok) throw new Error(result.error.code);
  return result.value;
}

it('keeps the random password in a note that only its owner reads', () => {
  expect(password()).toMatch(/^([a-z0-9]{5}-){3}[a-z0-9]{5}$/);
  expect(fs.statSync(note).mode & 0o777).toBe(0o600);
});

it.each(personKeys)('lets %s sign in with it, in the role of the story', async (key) => {
  const viewer = await entering(key);
  expect(viewer?.clubs).toEqual([{ code: club.code, name: club.name, role: people[key].role }]);
});

it('puts five designs on the shelf: one released for full power, two for bench spin, two under review', async () => {
  const shelf = await clubShelf(odile, { club: club.code });
  const rows = shelf.ok ? shelf.value.rows : [];
  const standings = Object.fromEntries(
    rows.map((r) => [r.title, `${r.latest?.letter} ${r.latest?.standing.key}, ahead ${r.draft.ahead}`]),
  );
  expect(standings).toEqual({
    'Observatory shutter drive': 'D fullPower, ahead false',
    'Sluice-paddle lifter': 'C benchSpin, ahead true',
    'Stage-trap lift': 'C underReview, ahead false',
    'Derrick slewing foot': 'B underReview, ahead false',
    'Tide-flap lifter': 'B benchSpin, ahead false',
  });
});

it('blocks every hold point of the stage-trap lift by an open critical finding and open threads', async () => {
  const { findings, threads, holdPoints } = await sheet('SB-003');
  const open = findings.filter((f) => f.disposition === null && f.finding.class === 'critical');
  expect(open.map((f) => f.finding.key)).toEqual(['lost-command:drive.lostCommand']);
  expect(threads.filter((t) => t.state === 'open').map((t) => t.anchor.kind)).toEqual([
    'finding',
    'check',
    'revision',
  ]);
  expect(threads.some((t) => t.state === 'open' && t.remarks.some((r) => r.act === 'reopened'))).toBe(true);
  expect(threads.some((t) => t.state === 'resolved')).toBe(true);
  for (const point of holdPoints) expect(point.state, point.key).toBe('blocked');
});

it('shows threads at a field, a check, a finding, a figure and a whole revision', async () => {
  const sheets = await Promise.all(['SB-001', 'SB-002', 'SB-003'].map((design) => sheet(design)));
  const kinds = new Set(sheets.flatMap((s) => s.threads.map((t) => t.anchor.kind)));
  expect([...kinds].sort()).toEqual(['check', 'field', 'figure', 'finding', 'revision']);
});

it('leaves an earlier revision of the released design unsigned', async () => {
  const { holdPoints } = await sheet('SB-001', 'C');
  expect(holdPoints.flatMap((p) => p.signatures)).toEqual([]);
});

it('keeps the club’s coupon tests in the revisions that came after them, and in no other', async () => {
  const coupons = async (design: string, letter: string) =>
    (await sheet(design, letter)).revision.document.coupons.map(({ material, mean }) => [material, mean]);
  const tested = clubCoupons.map(({ material, mean }) => [material, mean]);
  expect(await coupons('SB-004', 'A')).toEqual([]);
  expect(await coupons('SB-004', 'B')).toEqual(tested);
  expect(await coupons('SB-005', 'A')).toEqual(tested);
});

it('leaves a ledger that verifies', async () => {
  expect(await verifyLedger()).toMatchObject([{ club: club.code, intact: true }]);
});

it('leaves a database that holds a club alone, the note included', async () => {
  const before = fs.readFileSync(note, 'utf8');
  expect(await loadDemo(folder)).toBe(false);
  expect(fs.readFileSync(note, 'utf8')).toBe(before);
  const shelf = await clubShelf(odile, { club: club.code });
  expect(shelf.ok && shelf.value.rows.length).toBe(5);
});

// Every function of the service, one by one: a stranger finds nothing, nobody does nothing, a guest changes nothing. A
// function that is missing from the table fails the first test.
import fs from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { may } from '@/lib/access/policy';
import { enterCouponTest } from '@/lib/service/coupons/coupon-tests';
import { endMembership } from '@/lib/service/members/change-member';
import { invite } from '@/lib/service/members/invite';
import type { Result } from '@/lib/service/result';
import { revisionSheet } from '@/lib/service/sheets/revision-sheet';
import { signOutEverywhere } from '@/lib/service/sign-in/sign-out';
import { startThread } from '@/lib/service/threads/start-thread';
import { type Guard, guardOf } from '@/lib/service/use-case';
import type { Viewer } from '@/lib/service/viewer';
import { count, withSql } from '../store/sql';
import { type Cast, cast, club, codeOf, must, person } from './cast';
import { clearTheWay, published, shown, signs } from './story';

interface World {
  readonly people: Cast;
  readonly design: string;
  readonly threadId: string;
  readonly signOffId: string;
  readonly invitationId: string;
  readonly couponTestId: string;
  readonly finding: { readonly findingKey: string; readonly fingerprint: string };
  readonly seen: Awaited<ReturnType<typeof shown>>;
}

/** For each use case the input that its own club could send with success, or nearly so. */
const cases: Readonly<Record<string, (w: World) => object>> = {
  'designs/shelf clubShelf': () => ({ club: 'QS' }),
  'designs/new-design newDesign': () => ({ club: 'QS', starter: 'vane', title: 'Mine' }),
  'coupons/coupon-tests couponTests': () => ({ club: 'QS' }),
  'coupons/coupon-tests enterCouponTest': () => ({
    club: 'QS',
    material: 'petg_fdm',
    property: 'tensile_xy',
    mean: '40 MPa',
    deviation: '2',
    count: '5',
    process: 'Bench printer, 0.2 mm',
  }),
  'coupons/coupon-tests withdrawCouponTest': (w) => ({
    club: 'QS',
    testId: w.couponTestId,
    reason: 'The spool was damp.',
  }),
  'drafts/open-draft openDraft': (w) => ({ design: w.design }),
  'drafts/save-draft saveDraft': (w) => ({
    design: w.design,
    baseVersion: 1,
    edits: [{ do: 'set', path: 'duty.peakTorque', text: '9' }],
  }),
  'drafts/start-anew replaceDraftFromRevision': (w) => ({ design: w.design, baseVersion: 1, letter: 'A' }),
  'publishing/publish publish': (w) => ({ design: w.design, baseVersion: 1, changeNote: 'Mine now.' }),
  'publishing/revise-assessment reviseAssessment': (w) => ({ design: w.design, letter: 'A' }),
  'sheets/revision-sheet revisionSheet': (w) => ({ design: w.design, letter: 'A' }),
  'sheets/compare-revisions compareRevisions': (w) => ({ design: w.design, before: 'A', after: 'A' }),
  'sheets/follow-number followNumber': (w) => ({
    design: w.design,
    side: 'A',
    kind: 'check',
    key: 'motor.current',
  }),
  'gain-map/gain-map gainMap': (w) => ({ design: w.design, letter: 'A' }),
  'gain-map/gain-map startGainMap': (w) => ({ design: w.design, letter: 'A' }),
  'gain-map/gain-map watchGainMap': (w) => ({ design: w.design, letter: 'A' }),
  'gain-map/gain-map stopGainMap': (w) => ({ design: w.design, letter: 'A' }),
  'threads/start-thread startThread': (w) => ({
    design: w.design,
    letter: 'A',
    anchor: { kind: 'revision', path: '' },
    text: 'Hello.',
  }),
  'threads/answer reply': (w) => ({ threadId: w.threadId, text: 'Hello.' }),
  'threads/answer resolveThread': (w) => ({ threadId: w.threadId, text: '' }),
  'threads/answer reopenThread': (w) => ({ threadId: w.threadId, text: 'Again.' }),
  'findings/dispose-finding disposeFinding': (w) => ({
    design: w.design,
    letter: 'A',
    ...w.finding,
    kind: 'accepted',
    reason: 'Because I say so.',
  }),
  'signing/signing-page signingPage': (w) => ({ design: w.design, letter: 'A', holdPoint: 'benchSpin' }),
  'signing/sign sign': (w) => w.seen,
  'signing/withdraw-signature withdrawSignature': (w) => ({
    signOffId: w.signOffId,
    reason: 'I do not like it.',
  }),
  'members/members members': () => ({ club: 'QS' }),
  'members/invite invite': () => ({ club: 'QS', email: 'friend@xy.example', role: 'steward' }),
  'members/invite withdrawInvitation': (w) => ({ club: 'QS', invitationId: w.invitationId }),
  'members/change-member endMembership': (w) => ({ club: 'QS', userId: w.people.officer.userId }),
  'members/change-member changeRole': (w) => ({ club: 'QS', userId: w.people.guest.userId, role: 'steward' }),
  'ledger/ledger-page ledgerPage': () => ({ club: 'QS' }),
};

/** Exported functions that are no use case of a viewer, each with the reason why it needs no guard of a club. */
const others: Readonly<Record<string, string>> = {
  'designs/head designHead': 'arranges what a use case has read',
  'designs/judged idsOf': 'arranges what a use case has read',
  'designs/judged judgeRecord': 'arranges what a use case has read',
  'designs/judged revisionMark': 'arranges what a use case has read',
  'designs/judged standingView': 'arranges what a use case has read',
  'drafts/views draftNow': 'arranges what a use case has read',
  'findings/views dispositionView': 'arranges what a use case has read',
  'findings/views findingViews': 'arranges what a use case has read',
  'findings/weight disposeRefusal': 'part of the guard itself',
  'findings/weight hadHand': 'part of the guard itself',
  'findings/weight refusalSentence': 'words only',
  'publishing/assessed assessed': 'works on a document it is given',
  'publishing/assessed headlineOf': 'works on an assessment it is given',
  'sheets/changed-since changedSince': 'takes the context that a guard has made',
  'sheets/reading readSheet': 'takes the context that a guard has made',
  'signing/views blockerView': 'arranges what a use case has read',
  'signing/views givenOf': 'arranges what a use case has read',
  'signing/views holdPointView': 'arranges what a use case has read',
  'signing/views holdPointViews': 'arranges what a use case has read',
  'threads/anchors anchorLabel': 'works on what it is given',
  'threads/views threadViews': 'arranges what a use case has read',
  'handbook/handbook handbook': 'open to everyone: holds nothing of any club',
  'handbook/handbook handbookRow': 'open to everyone: holds nothing of any club',
  'handbook/handbook handbookFormulas': 'open to everyone: holds nothing of any club',
  'members/role-words roleNamed': 'words only',
  'ledger/health health': 'tells only whether the database answers',
  'ledger/verify-ledger verifyLedger': 'for the command line of whoever runs the service; no page calls it',
  'members/found-club anyClub': 'for the command line of whoever runs the service; no page calls it',
  'members/found-club foundClub': 'for the command line of whoever runs the service; no page calls it',
  'members/join invitationByToken': 'guarded by the token',
  'members/join join': 'guarded by the token',
  'sign-in/change-password changePassword': 'acts on the viewer alone, guarded by the password',
  'sign-in/sign-in signIn': 'guarded by the password',
  'sign-in/sign-out signOutEverywhere': 'acts on the viewer alone',
  'sign-in/slowed rationed': 'counts attempts',
  'sign-in/slowed slowed': 'counts attempts',
  'sign-in/viewer viewerOf': 'reads the person of a session',
};

type Case = (viewer: Viewer | null, input: object) => Promise<Result<unknown>>;
const found = new Map<string, { readonly run: Case; readonly guard: Guard | undefined }>();
let world: World;

beforeAll(async () => {
  const root = path.resolve(import.meta.dirname, '../../../lib/service');
  for (const shelf of fs.readdirSync(root, { withFileTypes: true })) {
    // Views and inputs are shapes; page-session needs a page's request and is tested with the pages.
    if (!shelf.isDirectory() || shelf.name === 'views' || shelf.name === 'inputs') continue;
    for (const file of fs.readdirSync(path.join(root, shelf.name))) {
      if (file === 'page-session.ts') continue;
      const name = `${shelf.name}/${file.replace(/\.ts$/, '')}`;
      const module: Record<string, unknown> = await import(path.join(root, name));
      // What is a use case, and takes which input, is for the table and its guard to say.
      for (const [key, value] of Object.entries(module))
        if (typeof value === 'function')
          found.set(`${name} ${key}`, { run: value as Case, guard: guardOf(value) });
    }
  }
  const people = await cast('QS');
  const design = await published(people.author, 'QS');
  const sheet = must(await revisionSheet(people.officer, { design }));
  const minor = sheet.findings.at(-1);
  if (minor === undefined) throw new Error('the starter has no finding any more');
  await clearTheWay(people.officer, design, 'A', 'benchSpin');
  const { signOffId } = must(await signs(people.member, design, 'A', 'benchSpin'));
  const anchor = { kind: 'revision' as const, path: '' };
  const { threadId } = must(await startThread(people.member, { design, letter: 'A', anchor, text: 'Why?' }));
  const invitation = { club: 'QS', email: 'new@qs.example', role: 'member' as const };
  const { invitationId } = must(await invite(people.steward, invitation));
  const coupon = {
    material: 'pa12_sls',
    property: 'tensile_xy',
    mean: '46',
    deviation: '1',
    count: '5',
  } as const;
  const { testId } = must(await enterCouponTest(people.member, { club: 'QS', ...coupon, process: 'Bureau' }));
  world = {
    people,
    design,
    threadId,
    signOffId,
    invitationId,
    couponTestId: testId,
    finding: { findingKey: minor.finding.key, fingerprint: minor.fingerprint },
    seen: await shown(people.officer, design, 'A', 'benchSpin'),
  };
});

async function each(
  viewer: Viewer | null,
  expected: (guard: Guard, name: string, result: Result<unknown>) => void,
) {
  for (const [name, inputOf] of Object.entries(cases)) {
    const entry = found.get(name);
    if (entry?.guard === undefined) throw new Error(`${name} is no use case`);
    expected(entry.guard, name, await entry.run(viewer, inputOf(world)));
  }
}

const facts = () =>
  withSql((sql) =>
    count(sql, 'SELECT (SELECT count(*) FROM ledger_event) + (SELECT sum(version) FROM draft)'),
  );

describe('the service', () => {
  it('has no exported function that these tables leave out, and none that they invent', () => {
    expect([...found.keys()].sort()).toEqual([...Object.keys(cases), ...Object.keys(others)].sort());
  });

  it('has a guard on every use case of the table', () => {
    for (const name of Object.keys(cases)) {
      const guard = found.get(name)?.guard;
      expect(guard?.action, name).toBeTruthy();
      expect(guard?.about, name).not.toBe('anyone');
    }
  });

  it('answers a stranger, the steward of another club, as if nothing were there', async () => {
    const stranger = await club('XY');
    const before = await facts();
    await each(stranger, (guard, name, result) => {
      const notFound = {
        club: 'club.notFound',
        design: 'design.notFound',
        part: /^(thread|signoff)\.notFound$/,
      };
      if (guard.about === 'anyone' || guard.about === 'self') throw new Error('not about a club');
      expect(codeOf(result), name).toMatch(notFound[guard.about]);
      // The same as for what does not exist: no detail, no sentence of its own.
      expect(result, name).toEqual({ ok: false, error: { code: codeOf(result) } });
    });
    expect(await facts()).toBe(before);
  });

  it('refuses whoever is not signed in', async () => {
    await each(null, (_guard, name, result) => expect(codeOf(result), name).toBe('viewer.none'));
    expect(codeOf(await signOutEverywhere(null))).toBe('viewer.none');
  });

  it('shows a guest what guests may read and refuses them every change', async () => {
    const before = await facts();
    await each(world.people.guest, ({ action }, name, result) => {
      if (action === null) throw new Error('no action');
      if (may('guest', action)) expect(result.ok, name).toBe(true);
      else expect(codeOf(result), name).toBe('viewer.role');
    });
    expect(await facts()).toBe(before);
  });

  it('shuts a member out of everything at the first call after their membership ended', async () => {
    const leaving = await person(world.people.steward, 'QS', 'Lou Leaving', 'steward');
    expect(must(await revisionSheet(leaving, { design: world.design })).design.role).toBe('steward');
    must(await endMembership(world.people.steward, { club: 'QS', userId: leaving.userId }));
    await each(leaving, (_guard, name, result) => expect(codeOf(result), name).toMatch(/\.notFound$/));
  });

  it('takes no input for granted: what is no input is refused as such, field by field', async () => {
    for (const [name, entry] of found) {
      if (cases[name] === undefined) continue;
      for (const input of [{}, { club: "QS'; DROP TABLE design; --", design: '../../etc', threadId: 'x' }])
        expect(codeOf(await entry.run(world.people.steward, input)), name).toBe('input.invalid');
    }
  });

  it('ignores fields that nobody asked for: a role or an author in the input changes nothing', async () => {
    const asOther = {
      design: world.design,
      letter: 'A',
      anchor: { kind: 'revision' as const, path: '' },
      text: 'Whose is this?',
      openedById: world.people.officer.userId,
      role: 'safetyOfficer',
    };
    must(await startThread(world.people.member, asOther));
    const sheet = must(await revisionSheet(world.people.guest, { design: world.design }));
    expect(sheet.threads.at(-1)?.openedBy.name).toBe('Mo Member');
  });
});

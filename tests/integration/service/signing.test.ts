// Signing: who, what, when, and that nothing half-signed is ever left behind.
import { beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { hashOf } from '@/lib/design/canonical';
import { disposeFinding } from '@/lib/service/findings/dispose-finding';
import { verifyLedger } from '@/lib/service/ledger/verify-ledger';
import { changeRole, endMembership } from '@/lib/service/members/change-member';
import { revisionSheet } from '@/lib/service/sheets/revision-sheet';
import { sign } from '@/lib/service/signing/sign';
import { signingPage } from '@/lib/service/signing/signing-page';
import { withdrawSignature } from '@/lib/service/signing/withdraw-signature';
import { resolveThread } from '@/lib/service/threads/answer';
import { startThread } from '@/lib/service/threads/start-thread';
import { connect, count, withSql } from '../store/sql';
import { type Cast, cast, codeOf, must, person } from './cast';
import { clearTheWay, nextRevision, published, shown, signs } from './story';

let people: Cast;
let design: string;
beforeAll(async () => {
  people = await cast('QS');
});
beforeEach(async () => {
  design = await published(people.author, 'QS');
  await clearTheWay(people.officer, design, 'A', 'fullPower');
});

const signatures = () =>
  withSql((sql) =>
    count(
      sql,
      `SELECT count(*) FROM sign_off s JOIN revision r ON r.id = s.revision_id JOIN design d ON d.id = r.design_id WHERE d.number = '${design}'`,
    ),
  );
const signEvents = () =>
  withSql((sql) =>
    count(
      sql,
      `SELECT count(*) FROM ledger_event WHERE kind = 'signOff.signed' AND subject LIKE '${design} %'`,
    ),
  );

describe('the way to full power', () => {
  it('goes hold point by hold point, with two people at the end', async () => {
    expect(codeOf(await signs(people.officer, design, 'A', 'proofLoad'))).toBe('signoff.blocked');
    expect(must(await signs(people.member, design, 'A', 'benchSpin')).released).toBe(true);
    expect(codeOf(await signs(people.member, design, 'A', 'proofLoad'))).toBe('signoff.role');
    expect(must(await signs(people.officer, design, 'A', 'proofLoad')).released).toBe(true);
    expect(must(await signs(people.officer, design, 'A', 'fullPower')).released).toBe(false);
    expect(codeOf(await signs(people.officer, design, 'A', 'fullPower'))).toBe('signoff.twice');
    expect(must(await signs(people.member, design, 'A', 'fullPower')).released).toBe(true);
    expect(codeOf(await signs(people.steward, design, 'A', 'fullPower'))).toBe('signoff.complete');
    const sheet = must(await revisionSheet(people.guest, { design }));
    expect(sheet.standing.key).toBe('fullPower');
    expect(sheet.holdPoints.map((h) => h.signatures.length)).toEqual([1, 1, 2]);
  });

  it('starts anew with every revision', async () => {
    must(await signs(people.member, design, 'A', 'benchSpin'));
    const letter = await nextRevision(people.author, design, 'duty.ambient', '21');
    const sheet = must(await revisionSheet(people.guest, { design }));
    expect([letter, sheet.revision.letter, sheet.standing.key]).toEqual(['B', 'B', 'underReview']);
    expect(codeOf(await signs(people.officer, design, 'A', 'proofLoad'))).toBe('signoff.blocked');
  });
});

describe('a signature is refused', () => {
  it('to the author, and to whoever edited the draft', async () => {
    expect(codeOf(await signs(people.author, design, 'A', 'benchSpin'))).toBe('signoff.author');
    const other = await published(people.member, 'QS');
    await nextRevision(people.officer, other, 'duty.ambient', '22');
    expect(codeOf(await signs(people.officer, other, 'B', 'benchSpin'))).toBe('signoff.author');
    const page = must(
      await signingPage(people.officer, { design: other, letter: 'B', holdPoint: 'benchSpin' }),
    );
    expect(page.revision.hands.map((h) => h.name)).toContain('Olu Officer');
  });

  it('with a wrong password, and nothing is written', async () => {
    const seen = await shown(people.member, design, 'A', 'benchSpin');
    const result = await sign(people.member, { ...seen, password: 'not the password at all' });
    expect(codeOf(result)).toBe('signoff.password');
    expect(await signatures()).toBe(0);
  });

  it('when the document, the assessment or the words seen are not the ones stored', async () => {
    const seen = await shown(people.member, design, 'A', 'benchSpin');
    for (const other of [
      { seenDocumentHash: 'a'.repeat(64) },
      { seenAssessmentHash: 'a'.repeat(64) },
      { meaningVersion: seen.meaningVersion + 1 },
    ])
      expect(codeOf(await sign(people.member, { ...seen, ...other }))).toBe('signoff.changed');
    expect(await signatures()).toBe(0);
  });

  it('when the stored document is no longer what its hash says', async () => {
    const seen = await shown(people.member, design, 'A', 'benchSpin');
    await withSql(async (sql) => {
      await sql.query('ALTER TABLE revision DISABLE TRIGGER USER');
      await sql.query(
        `UPDATE revision SET document = jsonb_set(document, '{duty,peakTorque}', '3')
         WHERE design_id = (SELECT id FROM design WHERE number = $1)`,
        [design],
      );
      await sql.query('ALTER TABLE revision ENABLE TRIGGER USER');
    });
    expect(codeOf(await sign(people.member, seen))).toBe('signoff.changed');
    expect(await signatures()).toBe(0);
  });

  it('while a critical finding is open, with the blockers in plain words', async () => {
    const open = await published(people.author, 'QS', 'vane');
    const result = await signs(people.member, open, 'A', 'benchSpin');
    expect(codeOf(result)).toBe('signoff.blocked');
    const detail = result.ok ? [] : result.error.detail;
    expect(detail).toEqual(
      expect.arrayContaining([expect.objectContaining({ sentence: expect.stringContaining('critical') })]),
    );
  });

  it('while a thread is open, also one opened after the page was read', async () => {
    const seen = await shown(people.member, design, 'A', 'benchSpin');
    const anchor = { kind: 'field' as const, path: 'rig.held' };
    const text = 'Which bolts?';
    const { threadId } = must(await startThread(people.officer, { design, letter: 'A', anchor, text }));
    expect(codeOf(await sign(people.member, seen))).toBe('signoff.blocked');
    must(await resolveThread(people.officer, { threadId, text: 'M6, seen.' }));
    must(await sign(people.member, seen));
  });

  it('to someone whose membership ended or whose role changed since the page was read', async () => {
    const leaving = await person(people.steward, 'QS', `Lee ${design}`, 'member');
    const seen = await shown(leaving, design, 'A', 'benchSpin');
    must(await changeRole(people.steward, { club: 'QS', userId: leaving.userId, role: 'guest' }));
    expect(codeOf(await sign(leaving, seen))).toBe('viewer.role');
    must(await endMembership(people.steward, { club: 'QS', userId: leaving.userId }));
    expect(codeOf(await sign(leaving, seen))).toBe('design.notFound');
  });

  it('by guessing passwords: after some the service makes the person wait', async () => {
    const guesser = await person(people.steward, 'QS', `Gus ${design}`, 'member');
    const seen = await shown(guesser, design, 'A', 'benchSpin');
    const codes = [];
    for (let i = 0; i < 8; i++)
      codes.push(codeOf(await sign(guesser, { ...seen, password: `guess number ${i}` })));
    expect(codes.at(0)).toBe('signoff.password');
    expect(codes.at(-1)).toBe('rate.limited');
  });
});

describe('at the same time', () => {
  it('one person signs once, however often they press', async () => {
    const seen = await shown(people.member, design, 'A', 'benchSpin');
    const results = await Promise.all(Array.from({ length: 6 }, () => sign(people.member, seen)));
    expect(results.filter((r) => r.ok)).toHaveLength(1);
    expect(await signatures()).toBe(1);
    expect(await signEvents()).toBe(1);
  });

  it('two people sign for one place: exactly one does', async () => {
    const [a, b] = [
      await shown(people.member, design, 'A', 'benchSpin'),
      await shown(people.officer, design, 'A', 'benchSpin'),
    ];
    const results = await Promise.all([sign(people.member, a), sign(people.officer, b)]);
    expect(results.map((r) => (r.ok ? 'signed' : r.error.code)).sort()).toEqual([
      'signed',
      'signoff.complete',
    ]);
  });
});

describe('a signature that breaks off', () => {
  it('in the middle of its transaction leaves neither signature nor ledger event', async () => {
    const seen = await shown(people.member, design, 'A', 'benchSpin');
    const blocker = await connect();
    // A second connection, because a transaction sees one state of the list of activities.
    const watcher = await connect();
    try {
      // Holding the club's row stops the signing at its last step, after the signature was inserted.
      await blocker.query('BEGIN');
      await blocker.query("SELECT 1 FROM club WHERE code = 'QS' FOR UPDATE");
      const signing = sign(people.member, seen);
      await vi.waitFor(
        async () => {
          const { rows } = await watcher.query(
            `SELECT pg_terminate_backend(pid) AS ended FROM pg_stat_activity
             WHERE datname = current_database() AND wait_event_type = 'Lock' AND query LIKE '%ledger_seq%'`,
          );
          expect(rows).toEqual([{ ended: true }]);
        },
        { timeout: 10_000, interval: 50 },
      );
      expect(codeOf(await signing)).toBe('service.fault');
    } finally {
      await blocker.query('ROLLBACK');
      await Promise.all([blocker.end(), watcher.end()]);
    }
    // The fault is in the log under its reference, and nowhere else.
    expect(vi.mocked(console.error).mock.calls).toHaveLength(1);
    vi.mocked(console.error).mockClear();
    expect([await signatures(), await signEvents()]).toEqual([0, 0]);
    expect((await verifyLedger({ club: 'QS' })).map((v) => v.intact)).toEqual([true]);
    must(await sign(people.member, seen));
  });
});

describe('withdrawing', () => {
  it('keeps the signature on record and takes the release back at once', async () => {
    const { signOffId } = must(await signs(people.member, design, 'A', 'benchSpin'));
    must(await signs(people.officer, design, 'A', 'proofLoad'));
    const reason = 'The guard was not fitted after all.';
    expect(codeOf(await withdrawSignature(people.author, { signOffId, reason }))).toBe('signoff.notYours');
    must(await withdrawSignature(people.officer, { signOffId, reason }));
    expect(codeOf(await withdrawSignature(people.member, { signOffId, reason }))).toBe('signoff.void');
    const sheet = must(await revisionSheet(people.guest, { design }));
    expect(sheet.standing.key).toBe('withdrawn');
    expect(sheet.holdPoints.map((h) => h.state)).toEqual(['withdrawn', 'suspended', 'blocked']);
    expect(sheet.holdPoints[0]?.signatures[0]?.withdrawn).toMatchObject({
      reason,
      by: { name: 'Olu Officer' },
    });
    must(await signs(people.member, design, 'A', 'benchSpin'));
    expect(must(await revisionSheet(people.guest, { design })).standing.key).toBe('proofLoad');
  });
});

describe('decisions about findings', () => {
  it('carry over while the finding states the same, and lapse when it does not', async () => {
    const before = must(await revisionSheet(people.officer, { design }));
    const decided = before.findings.filter((f) => f.disposition !== null);
    expect(decided.length).toBeGreaterThan(0);
    await nextRevision(people.author, design, 'duty.peakTorque', '7.5');
    const after = must(await revisionSheet(people.officer, { design }));
    const outcomes = decided.map((f) => {
      const now = after.findings.find((g) => g.finding.key === f.finding.key);
      if (now === undefined) return 'gone';
      return now.fingerprint === f.fingerprint ? now.disposition?.madeOn : now.lapsed?.madeOn;
    });
    expect(outcomes).toContain('A');
    expect(after.findings.filter((f) => f.lapsed !== null).every((f) => f.disposition === null)).toBe(true);
    expect(outcomes.filter((o) => o !== 'A' && o !== 'gone')).toEqual([]);
  });

  it('about critical ones are refused to the author and to members, and about a changed one to everyone', async () => {
    const open = await published(people.author, 'QS', 'vane');
    const sheet = must(await revisionSheet(people.officer, { design: open }));
    const critical = sheet.findings.find((f) => f.finding.class === 'critical');
    if (critical === undefined) throw new Error('the vane starter has no critical finding any more');
    const decision = {
      design: open,
      letter: 'A',
      findingKey: critical.finding.key,
      fingerprint: critical.fingerprint,
      kind: 'accepted' as const,
      reason: 'Good enough for now.',
    };
    expect(codeOf(await disposeFinding(people.author, decision))).toBe('finding.author');
    expect(codeOf(await disposeFinding(people.member, decision))).toBe('finding.officer');
    expect(codeOf(await disposeFinding(people.officer, { ...decision, fingerprint: hashOf('x') }))).toBe(
      'finding.changed',
    );
    expect(codeOf(await disposeFinding(people.officer, { ...decision, findingKey: 'no:such' }))).toBe(
      'finding.notFound',
    );
    expect(codeOf(await disposeFinding(people.officer, { ...decision, reason: 'ok' }))).toBe('input.invalid');
    must(await disposeFinding(people.officer, decision));
  });
});

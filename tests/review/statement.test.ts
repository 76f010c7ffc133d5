import { describe, expect, it } from 'vitest';
import { holdPointKeys } from '@/lib/review/hold-points';
import { meaningOf, meanings, meaningVersion } from '@/lib/review/meaning';
import { type Statement, statementHash } from '@/lib/review/statement';

const statement: Statement = {
  design: 'QS-001',
  letter: 'A',
  holdPoint: 'benchSpin',
  documentHash: 'a'.repeat(64),
  assessmentHash: 'b'.repeat(64),
  method: '1.0.0',
  meaning: meaningOf('benchSpin'),
  meaningVersion,
  requirementsVersion: 1,
  signerId: 'id',
  signerName: 'Olu',
  roleThen: 'safetyOfficer',
  at: '2026-01-01T00:00:00.000Z',
  authentication: 'password asked for at this signature',
};

describe('a signature', () => {
  it('covers every part of its statement: another value of any part gives another hash', () => {
    const same = statementHash(statement);
    for (const part of Object.keys(statement)) {
      const other = { ...statement, [part]: part.endsWith('Version') ? 99 : 'other' };
      expect(statementHash(other), part).not.toBe(same);
    }
  });

  it('says in words for each hold point what is approved, and that it is no certificate', () => {
    const words = holdPointKeys.map(meaningOf);
    expect(new Set(words).size).toBe(3);
    for (const text of words)
      expect(text).toMatch(/^I had no hand in this design\..*I approve.*it is no certificate/);
  });

  it('keeps the words of version 1 as they were signed under', async () => {
    // Frozen: a signature was or may be given under these words. A change of words is a new version.
    const { hashOf } = await import('@/lib/design/canonical');
    expect(hashOf(meanings[1])).toBe('c395c613ae5186adb82f3e56b5fdc392e6cf45a99277b8efe5dc4965ca0f8734');
  });
});

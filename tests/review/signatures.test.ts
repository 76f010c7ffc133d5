import { describe, expect, it } from 'vitest';
import { type HoldPoint, holdPointKeys } from '@/lib/review/hold-points';
import type { ReviewRole } from '@/lib/review/requirements';
import { complete, type Given, needsOf, signRefusal } from '@/lib/review/signatures';

const by = (signerId: string, roleThen: ReviewRole, holdPoint: HoldPoint, withdrawn = false): Given => ({
  holdPoint,
  signerId,
  roleThen,
  withdrawn,
});
const who = (userId: string, role: ReviewRole, hadHand = false) => ({ userId, role, hadHand });

describe('who signs', () => {
  it('is never someone who had a hand in the design, whatever their role and the hold point', () => {
    for (const point of holdPointKeys)
      for (const role of ['steward', 'safetyOfficer', 'member', 'guest'] as const)
        expect(signRefusal(point, who('a', role, true), [])).toBe('author');
  });

  it('is never a guest', () => {
    for (const point of holdPointKeys) expect(signRefusal(point, who('g', 'guest'), [])).toBe('role');
  });

  it('is any member, steward or safety officer at bench spin', () => {
    for (const role of ['steward', 'safetyOfficer', 'member'] as const)
      expect(signRefusal('benchSpin', who('m', role), [])).toBeNull();
  });

  it('is a safety officer at proof load', () => {
    expect(signRefusal('proofLoad', who('m', 'member'), [])).toBe('role');
    expect(signRefusal('proofLoad', who('s', 'steward'), [])).toBe('role');
    expect(signRefusal('proofLoad', who('o', 'safetyOfficer'), [])).toBeNull();
  });
});

describe('full power', () => {
  it('takes two people, one of them a safety officer', () => {
    expect(complete('fullPower', [by('o', 'safetyOfficer', 'fullPower')])).toBe(false);
    expect(complete('fullPower', [by('m', 'member', 'fullPower'), by('n', 'member', 'fullPower')])).toBe(
      false,
    );
    expect(
      complete('fullPower', [by('o', 'safetyOfficer', 'fullPower'), by('m', 'member', 'fullPower')]),
    ).toBe(true);
    expect(
      complete('fullPower', [by('m', 'member', 'fullPower'), by('o', 'safetyOfficer', 'fullPower')]),
    ).toBe(true);
    expect(
      complete('fullPower', [by('o', 'safetyOfficer', 'fullPower'), by('p', 'safetyOfficer', 'fullPower')]),
    ).toBe(true);
  });

  it('counts one person once, by whatever roles they signed', () => {
    const twice = [by('o', 'safetyOfficer', 'fullPower'), by('o', 'member', 'fullPower')];
    expect(complete('fullPower', twice)).toBe(false);
  });

  it('lets a second member not take the place of the safety officer', () => {
    expect(signRefusal('fullPower', who('n', 'member'), [by('m', 'member', 'fullPower')])).toBe('role');
    expect(signRefusal('fullPower', who('o', 'safetyOfficer'), [by('m', 'member', 'fullPower')])).toBeNull();
  });

  it('says which signature is still needed', () => {
    const needs = needsOf('fullPower', [by('m', 'member', 'fullPower')]);
    expect(needs.map((n) => n.met)).toEqual([false, true]);
    expect(needs[0]?.need.who).toContain('safety officer');
  });
});

describe('a signature', () => {
  it('is given once by a person at a hold point', () => {
    const given = [by('o', 'safetyOfficer', 'fullPower')];
    expect(signRefusal('fullPower', who('o', 'safetyOfficer'), given)).toBe('twice');
  });

  it('is not taken when the hold point has all it needs', () => {
    const given = [by('o', 'safetyOfficer', 'proofLoad')];
    expect(signRefusal('proofLoad', who('p', 'safetyOfficer'), given)).toBe('complete');
  });

  it('that was withdrawn counts for nothing and makes room for another, by the same person too', () => {
    const given = [by('o', 'safetyOfficer', 'proofLoad', true)];
    expect(complete('proofLoad', given)).toBe(false);
    expect(signRefusal('proofLoad', who('o', 'safetyOfficer'), given)).toBeNull();
  });

  it('at one hold point counts for no other', () => {
    expect(complete('proofLoad', [by('o', 'safetyOfficer', 'benchSpin')])).toBe(false);
  });
});

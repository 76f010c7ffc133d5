import { describe, expect, it } from 'vitest';
import type { UnderReview } from '@/lib/review/blockers';
import { type HoldPoint, holdPointKeys } from '@/lib/review/hold-points';
import { requirementSentences } from '@/lib/review/requirements';
import type { Given } from '@/lib/review/signatures';
import { judge, standingOf } from '@/lib/review/standing';
import { checkFact, facts, findingFact } from './facts-of-a-test';

type Reviewed = Omit<UnderReview, 'signed'>;

const clean: Reviewed = { facts: facts(), ordinal: 1, dispositions: [], openThreads: [], supersededBy: null };
const decidedOn = (findingKey: string, fingerprint: string) => ({
  findingKey,
  fingerprint,
  ordinal: 1,
  at: new Date(0),
});
const signed = (point: HoldPoint, ...people: string[]): Given[] =>
  people.map((signerId) => ({ holdPoint: point, signerId, roleThen: 'safetyOfficer', withdrawn: false }));

function keys(point: HoldPoint, over: Partial<Reviewed> = {}, given: readonly Given[] = []): string[] {
  return judge({ ...clean, ...over }, given).blockers[point].map((b) => b.key);
}

const spun = signed('benchSpin', 'o');
const loaded = [...spun, ...signed('proofLoad', 'o')];
const full = [...loaded, ...signed('fullPower', 'o', 'p')];

describe('the hold points', () => {
  it('open one after the other', () => {
    const states = (given: readonly Given[]) => Object.values(judge(clean, given).states);
    expect(states([])).toEqual(['open', 'blocked', 'blocked']);
    expect(states(spun)).toEqual(['released', 'open', 'blocked']);
    expect(states(loaded)).toEqual(['released', 'released', 'open']);
    expect(states(full)).toEqual(['released', 'released', 'released']);
  });

  it('are all stopped by an open critical finding, until it is disposed of', () => {
    const over = { facts: facts({ findings: [findingFact('f')] }) };
    for (const point of holdPointKeys) expect(keys(point, over, loaded)).toContain('finding:f');
    const disposed = { ...over, dispositions: [decidedOn('f', 'print of f')] };
    for (const point of holdPointKeys) expect(keys(point, disposed, loaded)).toEqual([]);
  });

  it('are stopped by a disposition that was made for other facts', () => {
    const over = {
      facts: facts({ findings: [findingFact('f')] }),
      dispositions: [decidedOn('f', 'other facts')],
    };
    expect(keys('benchSpin', over)).toEqual(['finding:f']);
  });

  it('are stopped by an open major finding from proof load on, never by a minor one', () => {
    const over = { facts: facts({ findings: [findingFact('m', 'major'), findingFact('n', 'minor')] }) };
    expect(keys('benchSpin', over)).toEqual([]);
    expect(keys('proofLoad', over, spun)).toEqual(['finding:m']);
    expect(keys('fullPower', over, loaded)).toEqual(['finding:m']);
  });

  it('are all stopped by an open thread', () => {
    for (const point of holdPointKeys)
      expect(keys(point, { openThreads: [4] }, loaded)).toEqual(['thread:4']);
  });

  it('are all stopped when nothing holds the actuator, and from proof load on when a hand does', () => {
    for (const point of holdPointKeys)
      expect(keys(point, { facts: facts({ held: 'nothing' }) }, loaded)).toEqual(['holding']);
    expect(keys('benchSpin', { facts: facts({ held: 'hand' }) })).toEqual([]);
    expect(keys('proofLoad', { facts: facts({ held: 'hand' }) }, spun)).toEqual(['holding']);
  });

  it('are all stopped when no element of the power path could be assessed', () => {
    for (const point of holdPointKeys)
      expect(keys(point, { facts: facts({ ladderAssessed: false }) }, loaded)).toEqual(['ladder']);
  });

  it('are not signed on a revision that a later one has replaced', () => {
    for (const point of holdPointKeys)
      expect(keys(point, { supersededBy: 'B' }, loaded)).toEqual(['superseded']);
  });
});

describe('a check below its required factor', () => {
  it('leaves bench spin open, since its power is limited', () => {
    expect(keys('benchSpin', { facts: facts({ checks: [checkFact()] }) })).toEqual([]);
  });

  it('stops proof load when it is on the ladder, and full power always', () => {
    const ladder = { facts: facts({ checks: [checkFact()] }) };
    const beside = { facts: facts({ checks: [checkFact({ onLadder: false })] }) };
    expect(keys('proofLoad', ladder, spun)).toEqual(['check:root']);
    expect(keys('proofLoad', beside, spun)).toEqual([]);
    expect(keys('fullPower', ladder, loaded)).toEqual(['check:root']);
    expect(keys('fullPower', beside, loaded)).toEqual(['check:root']);
  });

  it('can be accepted with a reason as long as the capacity reaches the demand', () => {
    const dispositions = [decidedOn('check:root', 'print of root')];
    expect(keys('proofLoad', { facts: facts({ checks: [checkFact()] }), dispositions }, spun)).toEqual([]);
  });

  it('can never be accepted on the ladder when the demand is beyond the capacity', () => {
    const over = {
      facts: facts({ checks: [checkFact({ factor: 0.99 })] }),
      dispositions: [decidedOn('check:root', 'print of root')],
    };
    const blocker = judge({ ...clean, ...over }, spun).blockers.proofLoad[0];
    expect(blocker?.key).toBe('check:root');
    expect(blocker?.dispose).toBeNull();
  });

  it('never prints as if it reached what is required', () => {
    const over = { facts: facts({ checks: [checkFact({ factor: 2.3999 })] }) };
    expect(judge({ ...clean, ...over }, spun).blockers.proofLoad[0]?.sentence).toBe(
      'Stage 1 pinion, tooth root: factor 2.39 where 2.4 is required.',
    );
  });
});

describe('a check that was not assessed', () => {
  const over = {
    facts: facts({ checks: [checkFact({ status: 'not assessed', factor: null, missing: 'No data.' })] }),
  };

  it('is no pass: it stops proof load and full power', () => {
    expect(keys('benchSpin', over)).toEqual([]);
    expect(keys('proofLoad', over, spun)).toEqual(['check:root']);
    expect(keys('fullPower', over, loaded)).toEqual(['check:root']);
  });

  it('can be accepted with a reason, such as a measurement', () => {
    const dispositions = [decidedOn('check:root', 'print of root')];
    expect(keys('proofLoad', { ...over, dispositions }, spun)).toEqual([]);
  });
});

describe('every blocker', () => {
  it('says in sentences what stands in the way and who can remove it', () => {
    const over = {
      facts: facts({
        held: 'nothing',
        ladderAssessed: false,
        checks: [checkFact(), checkFact({ key: 'other', factor: 0.5 })],
        findings: [findingFact('f'), findingFact('m', 'major')],
      }),
      openThreads: [1],
      supersededBy: 'C',
    };
    const { blockers } = judge({ ...clean, ...over }, []);
    expect(blockers.fullPower.map((b) => b.key)).toEqual([
      'superseded',
      'finding:f',
      'finding:m',
      'holding',
      'ladder',
      'check:root',
      'check:other',
      'thread:1',
      'earlier:benchSpin',
      'earlier:proofLoad',
    ]);
    for (const b of blockers.fullPower) {
      expect(b.sentence).toMatch(/\.$/);
      expect(b.remover).toMatch(/\.$/);
    }
  });
});

describe('the standing of a revision', () => {
  const standing = (over: Partial<Reviewed>, given: readonly Given[]) =>
    judge({ ...clean, ...over }, given).standing;

  it('rises with the releases', () => {
    expect(standingOf(null)).toBe('inPreparation');
    expect(standing({}, [])).toBe('underReview');
    expect(standing({}, spun)).toBe('benchSpin');
    expect(standing({}, loaded)).toBe('proofLoad');
    expect(standing({}, full)).toBe('fullPower');
  });

  it('is suspended as soon as someone opens a thread on a released revision', () => {
    expect(standing({ openThreads: [2] }, full)).toBe('suspended');
  });

  it('is suspended when a newer method finds something critical', () => {
    expect(standing({ facts: facts({ findings: [findingFact('new')] }) }, spun)).toBe('suspended');
  });

  it('is withdrawn, louder than what is still released, when a needed signature is taken back', () => {
    const taken = full.map((g) => ({ ...g, withdrawn: g.holdPoint === 'fullPower' && g.signerId === 'o' }));
    expect(standing({}, taken)).toBe('withdrawn');
  });

  it('is released again when the signature is given anew', () => {
    const taken = spun.map((g) => ({ ...g, withdrawn: true }));
    expect(standing({}, taken)).toBe('withdrawn');
    expect(standing({}, [...taken, ...signed('benchSpin', 'o')])).toBe('benchSpin');
  });

  it('suspends the later releases when the one they rest on is withdrawn', () => {
    const taken = loaded.map((g) => ({ ...g, withdrawn: g.holdPoint === 'benchSpin' }));
    const { states } = judge(clean, taken);
    expect([states.benchSpin, states.proofLoad]).toEqual(['withdrawn', 'suspended']);
  });

  it('is not taken back from a revision by the mere coming of a later one', () => {
    expect(standing({ supersededBy: 'B' }, spun)).toBe('benchSpin');
  });
});

describe('the requirements in words', () => {
  it('name each signature that the table asks for', () => {
    expect(requirementSentences('fullPower').filter((s) => s.endsWith('signs.'))).toHaveLength(2);
    expect(requirementSentences('benchSpin').filter((s) => s.endsWith('signs.'))).toHaveLength(1);
  });
});

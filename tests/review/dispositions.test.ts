import { describe, expect, it } from 'vitest';
import { type Decided, fingerprintOf, inForce, mayDispose } from '@/lib/review/dispositions';
import { finding } from './facts-of-a-test';

const fact = { key: 'rule:place', fingerprint: 'one' };
const day = (n: number) => new Date(Date.UTC(2026, 0, n));
const decided = (over: Partial<Decided & { id: string }>) => ({
  id: 'x',
  findingKey: fact.key,
  fingerprint: fact.fingerprint,
  ordinal: 1,
  at: day(1),
  ...over,
});

describe('a disposition', () => {
  it('carries over to a later revision on which the finding states the same', () => {
    const d = decided({});
    expect(inForce(fact, 3, [d])).toEqual({ holds: d, lapsed: null });
  });

  it('lapses when the facts of the finding change, and the finding is open again', () => {
    const d = decided({ fingerprint: 'before' });
    expect(inForce(fact, 2, [d])).toEqual({ holds: null, lapsed: d });
  });

  it('comes into force again when a later revision goes back to the facts it was made for', () => {
    const old = decided({ id: 'old' });
    const other = decided({ id: 'other', fingerprint: 'between', ordinal: 2, at: day(2) });
    expect(inForce(fact, 3, [old, other]).holds?.id).toBe('old');
  });

  it('says nothing about a revision before the one it was made on', () => {
    expect(inForce(fact, 1, [decided({ ordinal: 2 })])).toEqual({ holds: null, lapsed: null });
  });

  it('says nothing about another finding', () => {
    expect(inForce(fact, 1, [decided({ findingKey: 'rule:elsewhere' })])).toEqual({
      holds: null,
      lapsed: null,
    });
  });

  it('gives way to a later one on the same facts', () => {
    const list = [decided({ id: 'late', at: day(9) }), decided({ id: 'early', at: day(2) })];
    expect(inForce(fact, 1, list).holds?.id).toBe('late');
  });
});

describe('the fingerprint of a finding', () => {
  it('changes with its class, place, text and advice', () => {
    const same = fingerprintOf(finding());
    for (const over of [{ class: 'major' as const }, { at: 'x' }, { text: 'x' }, { advice: 'x' }])
      expect(fingerprintOf(finding(over))).not.toBe(same);
  });

  it('does not change with the wording of reason and source', () => {
    expect(fingerprintOf(finding({ reason: 'x', source: 'y' }))).toBe(fingerprintOf(finding()));
  });
});

describe('deciding', () => {
  it('about a critical finding or a check takes a safety officer', () => {
    for (const weight of ['critical', 'check'] as const) {
      expect(mayDispose(weight, 'safetyOfficer', false)).toBe('yes');
      for (const role of ['steward', 'member', 'guest'] as const)
        expect(mayDispose(weight, role, false)).toBe('officer');
    }
  });

  it('about a critical finding is closed to whoever had a hand in the design, a safety officer too', () => {
    expect(mayDispose('critical', 'safetyOfficer', true)).toBe('hand');
    expect(mayDispose('check', 'safetyOfficer', true)).toBe('hand');
  });

  it('about a major or minor finding is open to all but guests', () => {
    for (const weight of ['major', 'minor'] as const) {
      for (const role of ['steward', 'safetyOfficer', 'member'] as const)
        expect(mayDispose(weight, role, true)).toBe('yes');
      expect(mayDispose(weight, 'guest', false)).toBe('officer');
    }
  });
});

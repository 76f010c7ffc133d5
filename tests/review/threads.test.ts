import { describe, expect, it } from 'vitest';
import { maySettle, weighsOn } from '@/lib/review/threads';

describe('an open thread', () => {
  it('weighs on the revision it was raised on and on all later ones, not on earlier ones', () => {
    expect([weighsOn(2, 1), weighsOn(2, 2), weighsOn(2, 3)]).toEqual([false, true, true]);
  });

  it('is resolved by who opened it or by a safety officer without a hand in the design, by nobody else', () => {
    const person = (userId: string, role: string, hadHand: boolean) => ({ userId, role, hadHand });
    expect(maySettle(person('asker', 'member', false), 'asker')).toBe(true);
    expect(maySettle(person('o', 'safetyOfficer', false), 'asker')).toBe(true);
    expect(maySettle(person('o', 'safetyOfficer', true), 'asker')).toBe(false);
    expect(maySettle(person('author', 'member', true), 'asker')).toBe(false);
    expect(maySettle(person('s', 'steward', false), 'asker')).toBe(false);
  });
});

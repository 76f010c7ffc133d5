import { describe, expect, it } from 'vitest';
import { attemptKey, paces, waitAfter, waitsOf } from '@/lib/access/slow-down';

describe('slowing down', () => {
  it('forgives the first mistakes, then doubles the wait', () => {
    const waits = [1, 5, 6, 7, 8, 9].map((n) => waitAfter(n, paces.account));
    expect(waits).toEqual([0, 0, 2, 4, 8, 16]);
  });

  it('lists its waits up to the longest', () => {
    expect(waitsOf({ free: 2, first: 3, longest: 20 })).toEqual([0, 0, 3, 6, 12, 20]);
  });

  it('never locks anyone out: the wait ends', () => {
    for (const pace of Object.values(paces)) {
      expect(waitAfter(1e6, pace)).toBe(pace.longest);
      expect(pace.longest).toBeLessThanOrEqual(600);
    }
  });

  it('lets an hour of guessing at one account try fewer than a hundred passwords', () => {
    let seconds = 0;
    let guesses = 0;
    while (seconds < 3600) {
      guesses++;
      seconds += waitAfter(guesses, paces.account);
    }
    expect(guesses).toBeLessThan(100);
  });

  it('keeps no address and no name, and tells attempts of different kinds and places apart', () => {
    const key = attemptKey('account', 'a@b.example', '192.0.2.1');
    expect(key).toMatch(/^[0-9a-f]{64}$/);
    expect(attemptKey('account', 'a@b.example', '192.0.2.2')).not.toBe(key);
    expect(attemptKey('address', 'a@b.example', '192.0.2.1')).not.toBe(key);
    expect(attemptKey('account', 'a@b.example192.0.2.1')).not.toBe(key);
  });
});

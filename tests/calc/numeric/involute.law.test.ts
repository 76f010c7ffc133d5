/** The involute and its inverse undo each other over every angle a tooth can have. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inverseInvolute, involute } from '@/lib/calc/numeric/involute';

const seed = 11;

describe('inverseInvolute', () => {
  it('brings back every angle from 1° to 85°', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.0175, max: 1.48, noNaN: true }), (alpha) => {
        expect(Math.abs(inverseInvolute(involute(alpha)) - alpha)).toBeLessThan(1e-11);
      }),
      { seed, numRuns: 1000 },
    );
  });

  it('grows with the involute, from nothing at nothing', () => {
    expect(inverseInvolute(0)).toBe(0);
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 20, noNaN: true }), (inv) => {
        expect(inverseInvolute(inv * 1.001)).toBeGreaterThan(inverseInvolute(inv));
        expect(inverseInvolute(inv)).toBeLessThan(Math.PI / 2);
      }),
      { seed, numRuns: 500 },
    );
  });

  it('gives no angle for a negative involute', () => {
    expect(inverseInvolute(-1e-6)).toBeNaN();
  });
});

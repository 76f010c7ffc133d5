/** Bracketed roots: found to the tolerance asked for, and refused where none is bracketed. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bracketedRoot } from '@/lib/calc/numeric/root';

const seed = 7;

describe('bracketedRoot', () => {
  it('finds the roots of cubics that rise, at any place and steepness', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -50, max: 50, noNaN: true }),
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        (at, steep) => {
          const root = bracketedRoot((x) => steep * ((x - at) ** 3 + (x - at)), -60, 70, 1e-12);
          expect(Math.abs((root ?? Number.NaN) - at)).toBeLessThan(1e-11);
        },
      ),
      { seed, numRuns: 300 },
    );
  });

  it('finds the root of a falling function, and one that lies at an end', () => {
    expect(bracketedRoot(Math.cos, 0, 3)).toBeCloseTo(Math.PI / 2, 12);
    expect(bracketedRoot((x) => x, 0, 1)).toBe(0);
    expect(bracketedRoot((x) => x - 1, 0, 1)).toBe(1);
  });

  it('needs no more than two evaluations beyond bisection even on a step', () => {
    let calls = 0;
    const step = (x: number) => {
      calls++;
      return x < 0.3 ? -1 : 1;
    };
    expect(bracketedRoot(step, 0, 1, 1e-9)).toBeCloseTo(0.3, 8);
    // Halving [0, 1] to 2e-9 takes 29 steps; the two ends cost two more evaluations.
    expect(calls).toBeLessThanOrEqual(29 + 2 + 2);
  });

  it('needs far fewer than bisection on a smooth function', () => {
    let calls = 0;
    bracketedRoot(
      (x) => {
        calls++;
        return x * Math.exp(x) - 1;
      },
      0,
      1,
      1e-12,
    );
    expect(calls).toBeLessThan(16);
  });

  it('refuses ends of the same sign and functions that give no number', () => {
    expect(bracketedRoot((x) => x * x + 1, -1, 1)).toBeNull();
    expect(bracketedRoot(() => Number.NaN, -1, 1)).toBeNull();
  });
});

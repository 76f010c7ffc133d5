// What must hold of every comparison.
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { compare } from '@/lib/compare/compare';
import type { Comparison, Verdict } from '@/lib/compare/comparison';
import { assessed } from './arbitrary';

const seed = 20261125;
const turned: Readonly<Record<Verdict, Verdict>> = { better: 'worse', worse: 'better', neither: 'neither' };
const byKey = <T extends { readonly key: string }>(list: readonly T[]) =>
  new Map(list.map((item) => [item.key, item]));
const sortedKeys = (list: readonly { readonly key: string }[]) => list.map((item) => item.key).sort();

it('finds nothing when a thing is compared with itself', () => {
  fc.assert(
    fc.property(assessed, (a) => {
      const c = compare(a, structuredClone(a));
      expect([c.fields, c.items, c.figures, c.checks, c.raised, c.cleared, c.restated]).toEqual(
        Array.from({ length: 7 }, () => []),
      );
    }),
    { seed },
  );
});

it('turns everything round when the sides are swapped', () => {
  fc.assert(
    fc.property(assessed, assessed, (a, b) => {
      const there = compare(a, b);
      const back = compare(b, a);
      expect(back.raised).toEqual(there.cleared);
      expect(back.cleared).toEqual(there.raised);
      expect(back.headlineBefore).toEqual(there.headlineAfter);
      expect(sortedKeys(back.figures)).toEqual(sortedKeys(there.figures));
      expect(sortedKeys(back.checks)).toEqual(sortedKeys(there.checks));
      const figures = byKey(back.figures);
      for (const f of there.figures) swapped(f, figures.get(f.key));
      const checks = byKey(back.checks);
      for (const c of there.checks) {
        const r = checks.get(c.key);
        swapped(c, r);
        expect([r?.factorBefore, r?.statusBefore, r?.holdsToBefore, r?.crossed]).toEqual([
          c.factorAfter,
          c.statusAfter,
          c.holdsToAfter,
          c.crossed,
        ]);
      }
    }),
    { seed },
  );
});

it('keeps every finding: raised, cleared, restated or the same on both sides', () => {
  fc.assert(
    fc.property(assessed, assessed, (a, b) => {
      const c = compare(a, b);
      const now = new Set(b.assessment.findings.map((f) => f.key));
      const same = a.assessment.findings.filter((f) => now.has(f.key)).length;
      expect(c.raised.length).toBe(b.assessment.findings.length - same);
      expect(c.cleared.length).toBe(a.assessment.findings.length - same);
      expect(c.restated.length).toBeLessThanOrEqual(same);
    }),
    { seed },
  );
});

it('puts checks that crossed first, and the gravest finding first', () => {
  const weight = { critical: 3, major: 2, minor: 1 };
  const falls = (numbers: readonly number[]) =>
    numbers.every((n, i) => i === 0 || n <= (numbers[i - 1] ?? n));
  fc.assert(
    fc.property(assessed, assessed, (a, b) => {
      const c = compare(a, b);
      expect(falls(c.checks.map((x) => Number(x.crossed)))).toBe(true);
      expect(falls(c.raised.map((f) => weight[f.class]))).toBe(true);
      expect(falls(c.cleared.map((f) => weight[f.class]))).toBe(true);
    }),
    { seed },
  );
});

it('never answers with a number that is none', () => {
  fc.assert(
    fc.property(assessed, assessed, (a, b) => {
      // JSON turns what is not a finite number into null: the text must survive the way there and back.
      const c: Comparison = compare(a, b);
      expect(JSON.parse(JSON.stringify(c))).toEqual(c);
    }),
    { seed },
  );
});

interface Change {
  readonly change: number | null;
  readonly verdict: Verdict;
}

function swapped(there: Change, back: Change | undefined): void {
  expect(back?.verdict).toBe(turned[there.verdict]);
  if (there.change === null) expect(back?.change).toBeNull();
  else expect(back?.change).toBeCloseTo(-there.change, 9);
}

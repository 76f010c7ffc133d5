import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { letterOf, ordinalOf } from '@/lib/review/letters';

describe('revision letters', () => {
  // Published: the letters of ASME Y14.35 (I, O, Q, S, X, Z are not used; after Y come AA, AB …), clause from memory.
  it('run through the twenty letters of drawings and leave out I, O, Q, S, X and Z', () => {
    const first = Array.from({ length: 20 }, (_, i) => letterOf(i + 1)).join('');
    expect(first).toBe('ABCDEFGHJKLMNPRTUVWY');
  });

  it('go on with AA, AB … AY, BA after Y', () => {
    expect([21, 22, 40, 41].map(letterOf)).toEqual(['AA', 'AB', 'AY', 'BA']);
    // Counted by hand: 20 single letters and 400 pairs come before the first triple.
    expect([420, 421].map(letterOf)).toEqual(['YY', 'AAA']);
  });

  it('lead back to the ordinal, for every ordinal', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1_000_000_000 }), (n) => ordinalOf(letterOf(n)) === n),
      { seed: 20261125 },
    );
  });

  it('are dense: no two revisions share one', () => {
    const letters = Array.from({ length: 2000 }, (_, i) => letterOf(i + 1));
    expect(new Set(letters).size).toBe(2000);
  });

  it('refuse an ordinal that is none', () => {
    for (const n of [0, -1, 1.5, Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => letterOf(n)).toThrow(RangeError);
  });

  it('are not made of other signs', () => {
    for (const text of ['', 'I', 'AO', 'Q', 'S', 'X', 'Z', 'a', '1', 'A ', 'Ä'])
      expect(ordinalOf(text)).toBeNull();
  });
});

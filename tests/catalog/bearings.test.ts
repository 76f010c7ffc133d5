/** The table of ball bearings: its numbers mean their bores, its ratings follow from balls and pitch, its list is the one documents choose from. */
import { describe, expect, it } from 'vitest';
import { bearingNumbers } from '@/lib/catalog/bearings/labels';
import {
  bearingSize,
  bearingSizes,
  boreOfNumber,
  ratingRange,
  rememberedSource,
} from '@/lib/catalog/bearings/sizes';

describe('ball bearings', () => {
  it('stand under the numbers that documents choose from, and no others, with their sizes', () => {
    expect(Object.keys(bearingNumbers).sort()).toEqual(bearingSizes.map((row) => row.number).sort());
    for (const row of bearingSizes)
      expect(Object.entries(bearingNumbers)).toContainEqual([
        row.number,
        `${row.number}, ${row.d} × ${row.D} × ${row.B}`,
      ]);
  });

  it('have the bore their number means, a ring on either side of the balls, and speeds that seals lower', () => {
    expect(new Set(bearingSizes.map((row) => row.number)).size).toBe(bearingSizes.length);
    for (const row of bearingSizes) {
      expect(boreOfNumber(row.number), row.number).toBe(row.d);
      expect(row.D).toBeGreaterThan(row.d + 2);
      expect(row.C0).toBeLessThan(row.C);
      if (row.sealedSpeed !== null) expect(row.sealedSpeed).toBeLessThan(row.speed);
    }
  });

  /**
   * ISO 281 and ISO 76, single-row deep groove: C = 1.3 f_c Z^(2/3) D_w^1.8, C_0 = f_0 Z D_w² (N, mm). Balls of the
   * small series from memory; f_c and f_0 at their ratio of ball to pitch from the tables (from memory).
   */
  const balls: Readonly<Record<string, readonly [D_w: number, Z: number]>> = {
    '604': [2, 7],
    '605': [2.381, 7],
    '606': [3.175, 7],
    '623': [1.588, 7],
    '624': [2.381, 7],
    '625': [2.778, 7],
    '683': [1.191, 7],
    '684': [1.588, 7],
    '685': [1.588, 8],
    '686': [2, 8],
    '687': [2, 9],
    '688': [2.381, 9],
  };

  it.each(Object.entries(balls))(
    '%s: remembered ratings follow from its balls within 8 %% (C) and 15 %% (C_0)',
    (number, [D_w, Z]) => {
      const row = bearingSize(number);
      expect(row?.from).toBe(rememberedSource);
      const C = 1.3 * 58.2 * Z ** (2 / 3) * D_w ** 1.8;
      const C_0 = 12.4 * Z * D_w ** 2;
      expect(Math.abs((row?.C ?? 0) / C - 1)).toBeLessThan(0.08);
      expect(Math.abs((row?.C0 ?? 0) / C_0 - 1)).toBeLessThan(0.15);
    },
  );

  it('608 of the maker’s catalogue follows from seven balls of 5/32 in as well, which ties both kinds of row together', () => {
    const D_w = (5 / 32) * 25.4;
    expect((bearingSize('608')?.C ?? 0) / (1.3 * 58.2 * 7 ** (2 / 3) * D_w ** 1.8)).toBeCloseTo(1, 1);
  });

  it('carry a wider range where they are small or remembered', () => {
    for (const row of bearingSizes) {
      const { C } = ratingRange(row);
      expect(C.low / C.value).toBeCloseTo(row.d < 10 ? 0.75 : 0.885, 12);
      if (row.from === rememberedSource) expect(row.d).toBeLessThan(10);
    }
  });
});

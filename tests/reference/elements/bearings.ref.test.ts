/** The bearing tables against the recorded catalogues, row by row. */
import { describe, expect, it } from 'vitest';
import { requiredRating } from '@/lib/calc/bearings/life';
import { geometryFactor, thrustTable } from '@/lib/catalog/bearings/factors';
import { bearingSize, ratingRange, secondMaker } from '@/lib/catalog/bearings/sizes';
import { listed, olderColumn } from './bearings';
import cases from './bearings.json';

const pound = 4.4482216152605;

describe('the bearing tables', () => {
  it('hold the numbers and sizes of the catalogue of BRG-12, row by row', () => {
    const inputs = cases['BRG-12'].inputs;
    const rows = listed.map((number) => bearingSize(number));
    expect(rows.map((row) => row?.d)).toEqual(inputs.d_mm[0]);
    expect(rows.map((row) => row?.D)).toEqual(inputs.D_mm[0]);
    expect(rows.map((row) => row?.B)).toEqual(inputs.B_mm[0]);
  });

  it('hold e and Y of the table of BRG-09', () => {
    const inputs = cases['BRG-09'].inputs;
    expect(thrustTable.rows.map((row) => row.ratio)).toEqual(inputs['f0Fa/C0'][0]);
    expect(thrustTable.rows.map((row) => row.e)).toEqual(inputs.e[0]);
    expect(thrustTable.rows.map((row) => row.Y)).toEqual(inputs.Y[0]);
    for (const [k, row] of thrustTable.rows.entries())
      expect(Math.abs(row.ratio / (olderColumn[k] ?? 0) / geometryFactor.value - 1)).toBeLessThan(0.03);
  });

  it('hold the second maker of BRG-13, inside the range that each rating of the first states', () => {
    const inputs = cases['BRG-13'].inputs;
    const numbers = [inputs.numbers[0] ?? []].flat();
    const listed = { C: [inputs.C_maker2[0] ?? []].flat(), C0: [inputs.C0_maker2[0] ?? []].flat() };
    for (const [number, other] of Object.entries(secondMaker)) {
      const own = bearingSize(number);
      if (own === undefined) throw new Error(`No row for ${number}.`);
      const range = ratingRange(own);
      for (const rating of ['C', 'C0'] as const) {
        expect(other[rating]).toBe(listed[rating][numbers.indexOf(number)]);
        expect(other[rating]).toBeGreaterThan(range[rating].low);
        expect(other[rating]).toBeLessThan(range[rating].high);
      }
    }
  });

  it('say whose ratings they are, and trust miniature bearings less', () => {
    const [small, large] = ['608', '6800'].map((number) => {
      const row = bearingSize(number);
      if (row === undefined) throw new Error(`No row for ${number}.`);
      return ratingRange(row);
    });
    expect(small?.source).toContain('2202/TE');
    expect((small?.C.low ?? 0) / (small?.C.value ?? 1)).toBeCloseTo(0.75, 12);
    expect((large?.C.low ?? 0) / (large?.C.value ?? 1)).toBeCloseTo(0.885, 12);
    expect(bearingSize('6899')).toBeUndefined();
  });
});

it('asks 9665 lbf of a bearing by Weibull and about the same by ISO 281 at 90 %', () => {
  // BRG-07: x_D of 1440 rating lives at 854 lbf; the two forms agree at 90 % to 1 %.
  const C_req = requiredRating.of({ P: 854 * pound, omega: 2 * Math.PI, t_L: 1440e6 });
  expect(Math.abs(C_req / (9665 * pound) - 1)).toBeLessThan(0.01);
});

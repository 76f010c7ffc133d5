/** Strength when warm: the table's points, straight lines between them, and silence beyond. */
import { expect, it } from 'vitest';
import { materialKeys } from '@/lib/catalog/materials/labels';
import { strengthRetention } from '@/lib/catalog/materials/strength';

const celsius = (c: number) => c + 273.15;

it('meets the table at its points and halves the way between 40 °C and 50 °C at 45 °C', () => {
  expect(strengthRetention('pla_fdm', celsius(40))?.value).toBeCloseTo(0.75, 12);
  expect(strengthRetention('pla_fdm', celsius(45))?.value).toBeCloseTo((0.75 + 0.45) / 2, 9);
  expect(strengthRetention('pla_fdm', celsius(45))?.low).toBeCloseTo((0.6 + 0.2) / 2, 9);
  expect(strengthRetention('pla_fdm', celsius(-10))?.value).toBe(1);
});

it('never lets a material gain strength by warming', () => {
  for (const key of materialKeys) {
    let before = Number.POSITIVE_INFINITY;
    for (let c = 0; c <= 80; c += 1) {
      const now = strengthRetention(key, celsius(c))?.value ?? Number.NaN;
      expect(now, `${key} at ${c} °C`).toBeLessThanOrEqual(before);
      before = now;
    }
  }
});

it('gives no number above 80 °C, where there is no data', () => {
  for (const key of materialKeys) expect(strengthRetention(key, celsius(80.5))).toBeUndefined();
});

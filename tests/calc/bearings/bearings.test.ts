/** Bearing loads and duties: edges of the tables, both ways, and means that do not depend on order. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { meanLoad } from '@/lib/calc/bearings/duty';
import { lifeTime, ratingLife, reliableLife, requiredRating } from '@/lib/calc/bearings/life';
import {
  equivalentLoad,
  greatestThrust,
  staticFactor,
  staticLoad,
  thrustFactors,
  thrustRatio,
} from '@/lib/calc/bearings/load';
import { geometryFactor, staticFactors, thrustShare, thrustTable } from '@/lib/catalog/bearings/factors';
import { bearingSize } from '@/lib/catalog/bearings/sizes';

const range = (min: number, max: number) => fc.double({ min, max, noNaN: true });

it('gives the rating back from the life it gives, whatever load and speed (seed 281)', () => {
  fc.assert(
    fc.property(range(10, 5000), range(1, 1000), range(1000, 20000), (P, omega, C) => {
      const t_L = lifeTime.of({ L: ratingLife.of({ C, P }), omega });
      expect(Math.abs(requiredRating.of({ P, omega, t_L }) / C - 1)).toBeLessThan(1e-12);
    }),
    { seed: 281 },
  );
});

it('holds the first row below the table, says nothing above it, and gives each row back', () => {
  expect(thrustFactors(thrustTable.rows, 0)).toEqual({ e_a: 0.19, Y: 2.3 });
  for (const row of thrustTable.rows) {
    const found = thrustFactors(thrustTable.rows, row.ratio);
    expect(found?.e_a).toBeCloseTo(row.e, 12);
    expect(found?.Y).toBeCloseTo(row.Y, 12);
  }
  expect(thrustFactors(thrustTable.rows, 6.9)).toBeUndefined();
  expect(thrustFactors(thrustTable.rows, Number.NaN)).toBeUndefined();
});

it('passes from radial to thrust-laden load without a jump above 1 % along the table', () => {
  // ISO chose e so that 0.56 + Y e is 1; the rounded rows keep it to 1 %.
  for (const { e, Y } of thrustTable.rows) {
    const g = { F_r: 1000, e_a: e, Y };
    const before = equivalentLoad.of({ ...g, F_a: 1000 * e });
    const after = equivalentLoad.of({ ...g, F_a: 1000 * e * (1 + 1e-9) });
    expect(before).toBe(1000);
    expect(Math.abs(after - 1000)).toBeLessThan(10);
  }
});

it('never takes a thrust for free beyond what a 6200 may carry (worked by hand)', () => {
  const row = bearingSize('6200');
  const C_0 = row?.C0 ?? Number.NaN;
  const F_a = greatestThrust.of({ s_a: thrustShare.value, C_0 });
  expect(F_a).toBeCloseTo(597.5, 9);
  const x_a = thrustRatio.of({ f_0: geometryFactor.value, F_a, C_0 });
  const found = thrustFactors(thrustTable.rows, x_a);
  // x_a = 12.3/4 = 3.075, between 2.07 and 3.45: e = 0.34 + 0.04 × 1.005/1.38 = 0.3691.
  expect(found?.e_a).toBeCloseTo(0.36913, 5);
  expect(equivalentLoad.of({ F_r: 100, F_a, ...(found ?? { e_a: 0, Y: 0 }) })).toBeGreaterThan(F_a);
});

it('counts half the thrust on a standing bearing, and never less than the radial load', () => {
  expect(staticLoad.of({ F_r: 100, F_a: 1000 })).toBeCloseTo(560, 9);
  expect(staticLoad.of({ F_r: 1000, F_a: 100 })).toBe(1000);
  const s_0 = staticFactor.of({ C_0: 1400, P_0: 560 });
  expect(s_0).toBeCloseTo(2.5, 12);
  expect(s_0).toBeGreaterThan(staticFactors.shock.value);
  expect(staticFactors.normal.value).toBeGreaterThan(staticFactors.quiet.value);
});

it('means loads whatever their order, as the damage sum does (seed 77)', () => {
  const part = fc.record({ P: range(1, 1000), turns: range(0.1, 100) });
  fc.assert(
    fc.property(fc.array(part, { minLength: 1, maxLength: 6 }), (parts) => {
      const P_m = meanLoad(parts) ?? Number.NaN;
      // Independent: 1/L = Σ share/L_i.
      const whole = parts.reduce((sum, p) => sum + p.turns, 0);
      const damage = parts.reduce((sum, p) => sum + p.turns / whole / ratingLife.of({ C: 5000, P: p.P }), 0);
      expect(Math.abs(ratingLife.of({ C: 5000, P: P_m }) * damage - 1)).toBeLessThan(1e-9);
      expect(meanLoad([...parts].reverse())).toBeCloseTo(P_m, 6);
    }),
    { seed: 77 },
  );
});

it('has no mean load where nothing turns, and leaves out parts that stand', () => {
  expect(meanLoad([])).toBeUndefined();
  expect(meanLoad([{ P: 10, turns: 0 }])).toBeUndefined();
  expect(
    meanLoad([
      { P: 10, turns: 3 },
      { P: 900, turns: 0 },
    ]),
  ).toBe(10);
});

it('keeps the whole rating life at 90 % and a quarter of it at 99 %', () => {
  expect(reliableLife.of({ a_1: 0.25, L_10: 4e6 })).toBe(1e6);
});

/** Seats, bushes and swings: by hand, both ways, and balls against bearings whose balls are known. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { bushLoad, bushPressure, bushSpeed, pressureSpeed } from '@/lib/calc/bearings/bush';
import { lifeTurns, loadForLife, ratingLife } from '@/lib/calc/bearings/life';
import { thrustFactor, thrustRows } from '@/lib/calc/bearings/load';
import { seatGap, seatPressure } from '@/lib/calc/bearings/seat';
import { ballCount, ballRatio, leastSwing } from '@/lib/calc/bearings/swing';
import { bushLimitOf, bushLimits } from '@/lib/catalog/bearings/bushes';
import { thrustTable } from '@/lib/catalog/bearings/factors';
import { materialKeys } from '@/lib/catalog/materials/labels';

const range = (min: number, max: number) => fc.double({ min, max, noNaN: true });

it('a 608 under 300 N presses its seat with 1.95 MPa (300 N over 22 mm by 7 mm)', () => {
  expect(seatPressure.of({ F_r: 300, D: 22e-3, B: 7e-3 })).toBeCloseTo(1.948e6, -3);
});

it('a seat of PETG leaves a 608 by 39 µm on the diameter at 53 °C (59 · 10⁻⁶ × 22 mm × 30 K)', () => {
  const gap = seatGap.of({ alpha_s: 70e-6, alpha_b: 11e-6, D: 22e-3, T_2: 326.15, T_1: 296.15 });
  expect(gap * 1e6).toBeCloseTo(38.9, 1);
});

it('the load that lasts a life gives that life back (seed 28)', () => {
  fc.assert(
    fc.property(range(500, 20000), range(1e4, 1e9), (C, N) => {
      expect(ratingLife.of({ C, P: loadForLife.of({ C, N }) }) / N).toBeCloseTo(1, 9);
    }),
    { seed: 28 },
  );
});

it('counts the turns of a swing there and back by its way', () => {
  // 1000 moves of 90° each: 250 turns.
  expect(lifeTurns.of({ N_moves: 1000, phi_move: Math.PI / 2, i_out: 1 })).toBeCloseTo(250, 9);
});

it('says between which rows it reads, and the middle of two rows is their mean', () => {
  const rows = thrustRows(thrustTable.rows, 0.26);
  expect(rows?.before?.ratio).toBe(0.172);
  expect(rows?.after.ratio).toBe(0.345);
  expect(thrustFactor.of({ Y_1: 2, Y_2: 1, x_1: 1, x_2: 3, x_a: 2 })).toBe(1.5);
  expect(thrustRows(thrustTable.rows, 0.1)?.before).toBeUndefined();
  expect(thrustRows(thrustTable.rows, 7)).toBeUndefined();
});

it('a bush: the load that pressure times speed allows gives that product back', () => {
  const g = { d: 8e-3, b: 10e-3 };
  const v_b = bushSpeed.of({ omega: 50, d: g.d });
  expect(v_b).toBeCloseTo(0.2, 12);
  const F_r = bushLoad.of({ ...g, pv: bushLimits.plastic.pv.value, v_b });
  expect(pressureSpeed.of({ p_b: bushPressure.of({ ...g, F_r }), v_b })).toBeCloseTo(1e5, 6);
});

it('never counts more balls than there are, so that it never calls a small swing large enough', () => {
  // Balls of real bearings (from memory): 608 7, 6200 8, 6204 8, 6802 15, 623 7, 6001 8.
  const known = [
    [8, 22, 7],
    [10, 30, 8],
    [20, 47, 8],
    [15, 24, 15],
    [3, 10, 7],
    [12, 28, 8],
  ] as const;
  for (const [d, D, Z] of known) {
    const counted = ballCount.of({ D, d });
    expect(counted).toBeLessThanOrEqual(Z);
    expect(counted).toBeGreaterThan(0.65 * Z);
  }
});

it('a 608 needs a half swing of about a sixth of a turn', () => {
  // 7 balls of 3.97 mm on 15 mm: 360°/(7 × (1 − 0.265)) = 70°; the low count asks 77°.
  const g = { D: 22e-3, d: 8e-3 };
  const phi = leastSwing.of({ Z_b: ballCount.of(g), gamma_b: ballRatio.of(g) });
  expect(ballRatio.of(g)).toBeCloseTo(0.28, 9);
  expect((phi * 180) / Math.PI).toBeGreaterThan(70);
  expect((phi * 180) / Math.PI).toBeLessThan(82);
});

it('gives a limit to bushes of plastic and brass, none to steel, and trusts prints least', () => {
  expect(bushLimitOf('steel_c45')).toBeUndefined();
  expect(bushLimitOf('al_6061_t6')).toBeUndefined();
  expect(bushLimitOf('brass_cuzn39pb3')).toBe(bushLimits.brass);
  for (const key of materialKeys.filter((k) => /_(fdm|sls|sla)/.test(k)))
    expect(bushLimitOf(key)).toBe(bushLimits.print);
  for (const row of Object.values(bushLimits)) {
    expect(row.pv.low).toBeLessThanOrEqual(row.pv.value);
    expect(row.pv.value).toBeLessThanOrEqual(row.pv.high);
    expect(bushLimits.print.pv.value).toBeLessThanOrEqual(row.pv.value);
    expect(row.source).not.toBe('');
  }
});

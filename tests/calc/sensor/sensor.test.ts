/** Sensor errors against the divider and the statistics they stand for. */
import { expect, it } from 'vitest';
import {
  atOutput,
  loadingError,
  positionError,
  randomError,
  travelLeft,
  travelUse,
} from '@/lib/calc/sensor/error';
import { quantisationNoise } from '@/lib/calc/sensor/resolution';

it('loses by loading what a loaded divider loses at worst (independent)', () => {
  const R_pot = 10e3;
  const R_in = 1e6;
  let worst = 0;
  for (let x = 0; x <= 1; x += 1e-4) {
    const source = R_pot * x * (1 - x);
    worst = Math.max(worst, x - (x * R_in) / (R_in + source));
  }
  expect(loadingError.of({ R_pot, R_in }) / worst).toBeCloseTo(1, 2);
});

it('has the rounding noise of a sum over one step (independent)', () => {
  const n = 20_000;
  let sum = 0;
  for (let i = 0; i < n; i += 1) sum += ((i + 0.5) / n - 0.5) ** 2;
  expect(quantisationNoise.of({ q: 1 })).toBeCloseTo(Math.sqrt(sum / n), 6);
});

it('runs out of range when the output turns it further than its travel, or off centre', () => {
  const turn = Math.PI / 180;
  expect(travelUse.of({ phi_out: 180 * turn, i_s: 2, phi_s: 270 * turn })).toBeGreaterThan(1);
  expect(travelLeft.of({ phi_s: 270 * turn, phi_out: 180 * turn, i_s: 1, e_centre: -30 * turn })).toBeCloseTo(
    15 * turn,
    9,
  );
  expect(travelLeft.of({ phi_s: 270 * turn, phi_out: 180 * turn, i_s: 1, e_centre: 60 * turn })).toBeLessThan(
    0,
  );
});

it('adds systematic errors in full and random ones as squares', () => {
  const e_r = randomError.of({ e_q: 3e-3, e_noise: 4e-3 });
  expect(e_r).toBeCloseTo(5e-3, 12);
  expect(positionError.of({ e_l: 0.02, j_s: 0.01, e_r })).toBeCloseTo(0.035, 12);
  expect(atOutput.of({ e_s: 0.06, i_s: 3 })).toBeCloseTo(0.02, 12);
});

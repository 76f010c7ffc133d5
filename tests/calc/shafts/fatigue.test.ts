/** Fatigue of shafts: how the five lines stand to each other, diameters both ways, fits where they meet. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import * as criteria from '@/lib/calc/shafts/fatigue/criteria';
import * as endurance from '@/lib/calc/shafts/fatigue/endurance';
import * as notch from '@/lib/calc/shafts/fatigue/notch';
import { criticalSpeed, shearModulus, torsionalStiffness, twist } from '@/lib/calc/shafts/stiffness';
import * as stress from '@/lib/calc/shafts/stress';
import { reliabilityFactors } from '@/lib/catalog/shafts/fatigue';
import { keywayNotch } from '@/lib/catalog/shafts/keys';
import { deflectionLimit, slopeLimits } from '@/lib/catalog/shafts/limits';

const range = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const { kilopoundPerSquareInch: kpsi, inch, millimetre } = endurance.fitUnits;

it('is never kinder by Soderberg than by Goodman, nor by Goodman than by Gerber; all are Se/σa without a mean (seed 6)', () => {
  fc.assert(
    fc.property(range(1e6, 3e8), range(0, 4e8), (sigma_a, sigma_m) => {
      const g = { sigma_a, sigma_m, S_e: 2e8, S_ut: 7e8, S_y: 5.5e8 };
      const goodman = criteria.goodmanFactor.of(g);
      expect(criteria.soderbergFactor.of(g)).toBeLessThanOrEqual(goodman * (1 + 1e-12));
      expect(goodman).toBeLessThanOrEqual(criteria.gerberFactor.of(g) * (1 + 1e-12));
      expect(criteria.soderbergFactor.of(g)).toBeLessThanOrEqual(criteria.ellipticFactor.of(g) * (1 + 1e-12));
      for (const f of [criteria.goodmanFactor, criteria.gerberFactor])
        expect(f.of({ ...g, sigma_m: 0 })).toBeCloseTo(g.S_e / sigma_a, 9);
      // Gerber’s own equation: n σa/Se + (n σm/Sut)² = 1.
      const n = criteria.gerberFactor.of(g);
      expect((n * sigma_a) / g.S_e + ((n * sigma_m) / g.S_ut) ** 2).toBeCloseTo(1, 9);
    }),
    { seed: 6 },
  );
});

it('keeps at its least diameter just the factor it was asked for, static and by Goodman (seed 8)', () => {
  fc.assert(
    fc.property(range(0.1, 50), range(0.1, 50), range(1, 4), (M, T, n) => {
      const S_y = 4e8;
      const d = stress.leastDiameterStatic.of({ n, K_s: 1, M_b: M, T, S_y });
      const sigma = stress.bendingStress.of({ M_b: M, d });
      const tau_t = stress.torsionStress.of({ T, d });
      const sigma_v = stress.equivalentStress.of({ sigma, tau_t });
      expect(stress.yieldFactor.of({ S_y, sigma_v }) / n).toBeCloseTo(1, 9);

      const k = { K_f: 1.6, K_fs: 1.3 };
      const s = { S_e: 2e8, S_ut: 7e8 };
      const d_f = criteria.leastDiameterFatigue.of({ n, ...k, M_a: M, T_a: T / 2, M_m: M / 3, T_m: T, ...s });
      const sigma_a = criteria.notchedStress.of({ ...k, M_b: M, T: T / 2, d: d_f });
      const sigma_m = criteria.notchedStress.of({ ...k, M_b: M / 3, T, d: d_f });
      expect(criteria.goodmanFactor.of({ sigma_a, sigma_m, ...s }) / n).toBeCloseTo(1, 9);
    }),
    { seed: 8 },
  );
});

it('reads a mean as swing on the same Goodman line, and yields before it at a high mean', () => {
  const g = { sigma_a: 1e8, sigma_m: 3.5e8, S_e: 2e8, S_ut: 7e8, S_y: 4.4e8 };
  expect(criteria.reversedStress.of(g)).toBeCloseTo(2e8, 3);
  expect(criteria.firstPeakFactor.of(g)).toBeLessThan(1);
});

it('joins the fits where they meet: shoulders at h/r = 2 within 1 %, sizes at 51 mm within 0.5 %', () => {
  for (const D of [8, 10, 20]) {
    const g = { h: 1, r: 0.5, D };
    const blunt = notch.shoulderBendingBlunt.of(g);
    const sharp = notch.shoulderBendingSharp.of(g);
    expect(Math.abs(blunt / sharp - 1)).toBeLessThan(0.01);
    expect(notch.shoulderBending(g)).toBe(blunt);
    expect(notch.shoulderBending({ ...g, r: 0.4 })).toBe(notch.shoulderBendingSharp.of({ ...g, r: 0.4 }));
  }
  const size = (d: number) => endurance.sizeFactor.of({ d: d * millimetre, d_1: millimetre });
  expect(Math.abs(size(51) / size(51.01) - 1)).toBeLessThan(0.005);
});

it('has no shoulder factor where the fits do not reach', () => {
  expect(notch.shoulderBending({ h: 1, r: 0.04, D: 20 })).toBeUndefined();
  expect(notch.shoulderBending({ h: 1, r: 20, D: 20 })).toBeUndefined();
  expect(notch.shoulderBending({ h: 1, r: Number.NaN, D: 20 })).toBeUndefined();
});

it('feels notches less in torsion than in bending, more in hard steel, and never more than all (steel of 60 to 200 kpsi)', () => {
  let before = 0;
  for (const strength of [60, 100, 150, 200]) {
    const g = { S_ut: strength * kpsi, S_1: kpsi, l_1: inch };
    const q = notch.notchSensitivity.of({ a_n: notch.notchLengthBending.of(g), r: 1e-3 });
    const torsion = notch.notchSensitivity.of({ a_n: notch.notchLengthTorsion.of(g), r: 1e-3 });
    expect(torsion).toBeGreaterThan(q);
    expect(torsion).toBeLessThan(1);
    expect(q).toBeGreaterThan(before);
    before = q;
  }
  expect(keywayNotch.torsion).toBeGreaterThan(keywayNotch.bending);
});

it('gives the published factors of scatter from their normal deviates to the rounding of the table', () => {
  for (const row of reliabilityFactors.rows)
    expect(Math.abs(endurance.scatterFactor.of({ z_a: row.z }) - row.k)).toBeLessThan(6e-4);
});

it('twists by torque over stiffness, and shears as an isotropic metal does', () => {
  const G = shearModulus.of({ E: 207e9, nu: 0.3 });
  expect(G / 1e9).toBeCloseTo(79.6, 1); // steel, 79.3 GPa in Shigley Table A-5 (from memory), within 0.5 %
  const g = { l: 0.06, G, d: 8e-3, d_i: 3e-3 };
  expect(twist.of({ ...g, T: 5 })).toBeCloseTo(5 / torsionalStiffness.of(g), 12);
});

it('whips at √(k/m): the weight of 0.2 kg bends a shaft of 1e6 N/m by 1.96 µm', () => {
  const y_w = (0.2 * 9.80665) / 1e6;
  expect(criticalSpeed.of({ g_n: 9.80665, y_w })).toBeCloseTo(Math.sqrt(1e6 / 0.2), 6);
});

it('stretches under thrust by force over area, and takes both planes together', () => {
  expect(stress.thrustStress.of({ F_a: Math.PI * 100, d: 20e-3 })).toBeCloseTo(1e6, 3);
  expect(stress.resultantMoment.of({ M_y: 3, M_z: 4 })).toBeCloseTo(5, 12);
});

// Table 7-2 by diametral pitch, from memory: below 10 per inch 0.010 in, 11 to 19 0.005 in, 20 to 50 0.003 in.
it('lets coarse teeth deflect as the table by pitch does, and finer ones than it knows in proportion', () => {
  const ofPitch = (P: number) => deflectionLimit(25.4e-3 / P) / 25.4e-3;
  for (const [P, limit] of [
    [9, 0.01],
    [11, 0.005],
    [19, 0.005],
    [20, 0.003],
    [50, 0.003],
  ] as const)
    expect(ofPitch(P)).toBeCloseTo(limit, 4);
  expect(deflectionLimit(0.25e-3)).toBeCloseTo(deflectionLimit(0.5e-3) / 2, 12);
});

it('asks a spur gear to lean less than a ball bearing may', () => {
  expect(slopeLimits.spurGear.value).toBeLessThan(slopeLimits.deepGrooveBearing.low);
});

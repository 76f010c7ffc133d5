/** Least diameters and finite life: each put back into the criterion it was solved from. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import * as criteria from '@/lib/calc/shafts/fatigue/criteria';
import * as endurance from '@/lib/calc/shafts/fatigue/endurance';
import { leastDiameterElliptic, leastDiameterGoodman } from '@/lib/calc/shafts/fatigue/least-diameter';
import * as stress from '@/lib/calc/shafts/stress';

const range = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const { kilopoundPerSquareInch: kpsi, millimetre } = endurance.fitUnits;

it('keeps just the factor it was asked for with the size factor of the diameter found (seed 7)', () => {
  fc.assert(
    fc.property(range(0.05, 80), range(0.05, 80), range(1, 3), range(0, 1), (M, T, n, e_k) => {
      const k = { K_f: 1.7, K_fs: 1.4 };
      const s = { S_f1: 2.1e8, e_k, S_ut: 7e8, S_y: 4.4e8 };
      const loads = { M_a: M, T_a: T / 2, M_m: M / 5, T_m: T / 2 };
      for (const [least, line] of [
        [leastDiameterGoodman, criteria.goodmanFactor],
        [leastDiameterElliptic, criteria.ellipticFactor],
      ] as const) {
        const d = least.of({ n, ...k, ...s, ...loads, d_1: millimetre });
        const S_e = s.S_f1 * endurance.sizeFactor.of({ d, d_1: millimetre }) ** e_k;
        const sigma_a = criteria.notchedStress.of({ ...k, M_b: loads.M_a, T: loads.T_a, d });
        const sigma_m = criteria.notchedStress.of({ ...k, M_b: loads.M_m, T: loads.T_m, d });
        expect(line.of({ ...s, S_e, sigma_a, sigma_m }) / n).toBeCloseTo(1, 9);
      }
    }),
    { seed: 7 },
  );
});

it('keeps the size factor where its fit begins, so that thin pins gain no strength from being thin', () => {
  const size = (d: number) => endurance.sizeFactor.of({ d: d * millimetre, d_1: millimetre });
  expect(size(1)).toBe(size(2.79));
  expect(size(2.8)).toBeLessThan(size(2.79));
  expect(size(7.62)).toBeCloseTo(1, 2); // the fit is 1 at 0.3 in, Shigley eq. 6-20
});

it('lasts as long as its own finite-life line says, held at a thousand cycles and at the endurance limit', () => {
  const S_ut = 100 * kpsi;
  const S_e = 0.4 * S_ut;
  const f_k = endurance.strengthKept.of({ S_ut, S_1: kpsi });
  const a_N = endurance.lifeIntercept.of({ f_k, S_ut, S_e });
  const b_N = endurance.lifeExponent.of({ f_k, S_ut, S_e });
  const held = { a_N, b_N, N_low: 1e3, N_high: 1e6 };
  const at = (N: number) => endurance.finiteLifeStrength.of({ ...held, N });
  expect(at(1e6) / S_e).toBeCloseTo(1, 9);
  expect(at(1e9)).toBe(at(1e6));
  expect(at(1e3) / (f_k * S_ut)).toBeCloseTo(1, 9);
  expect(at(1)).toBe(at(1e3));
  expect(endurance.cyclesToFailure.of({ sigma_rev: at(5e4), a_N, b_N }) / 5e4).toBeCloseTo(1, 9);
});

it('keeps as much of the size factor for a number of cycles as the line through the sized endurance limit (seed 9)', () => {
  fc.assert(
    fc.property(range(0.75, 1.11), range(2, 8), (k_b, digits) => {
      const [S_ut, S_e1, N] = [100 * kpsi, 35 * kpsi, 10 ** digits];
      const f_k = endurance.strengthKept.of({ S_ut, S_1: kpsi });
      const ends = { N, N_low: 1e3, N_high: 1e6 };
      const through = (S_e: number) => {
        const a_N = endurance.lifeIntercept.of({ f_k, S_ut, S_e });
        const b_N = endurance.lifeExponent.of({ f_k, S_ut, S_e });
        return endurance.finiteLifeStrength.of({ a_N, b_N, ...ends });
      };
      const own = endurance.sizedStrength.of({
        S_f1: through(S_e1),
        k_b,
        e_k: endurance.sizeExponent.of(ends),
      });
      expect(own / through(k_b * S_e1)).toBeCloseTo(1, 9);
    }),
    { seed: 9 },
  );
});

it('stretches under moment and thrust as both stresses added', () => {
  const [M_b, F_a, d] = [4, -300, 8e-3];
  const both = stress.bendingStress.of({ M_b: stress.momentWithThrust.of({ M_b, F_a, d }), d });
  expect(both).toBeCloseTo(stress.bendingStress.of({ M_b, d }) + stress.thrustStress.of({ F_a: 300, d }), 3);
});

it('stands as far from the swing it lasts as Goodman’s line says, and takes the thicker of two diameters', () => {
  const g = { sigma_a: 8e7, sigma_m: 5e7, S_ut: 6e8 };
  const S_f = 2e8;
  expect(S_f / criteria.goodmanStress.of({ ...g, S_f })).toBeCloseTo(
    criteria.goodmanFactor.of({ ...g, S_e: S_f }),
    12,
  );
  const M = stress.withShock.of({ K_A: 1.25, M: 4 });
  expect(criteria.halfSwing.of({ M })).toBeCloseTo(2.5, 12);
  const one = { n: 1.5, K_s: 1, M_b: M, T: 3, S_y: 3e8 };
  const d_y = stress.leastDiameterStatic.of(one);
  const d_f = stress.leastDiameterStatic.of({ ...one, K_s: 8 });
  expect(d_f / d_y).toBeCloseTo(2, 12);
  expect(stress.governingDiameter.of({ d_y, d_f })).toBe(d_f);
});

it('counts a turn as one swing, and a short move as one at least', () => {
  const g = { N_moves: 1000, phi_move: Math.PI / 2 };
  expect(endurance.stressCycles.of({ ...g, i_s: 100 })).toBeCloseTo(25000, 6);
  expect(endurance.stressCycles.of({ ...g, i_s: 1 })).toBe(1000);
});

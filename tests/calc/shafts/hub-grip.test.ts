/** Hubs that grip: what warmth and creep leave of a press fit in plastic, clamps against their own statics, set screws together. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { clampBorePressure, clampForce } from '@/lib/calc/shafts/hubs/clamp';
import {
  clampHubTorque,
  clampPressure,
  hubHoopStress,
  pressFitPressure,
  pressFitTorque,
  setScrewForce,
  setScrewTorque,
} from '@/lib/calc/shafts/hubs/friction';
import { hubTorque } from '@/lib/calc/shafts/hubs/load';
import { relaxedPressure, warmInterference } from '@/lib/calc/shafts/hubs/press';
import { property } from '@/lib/catalog/materials/materials';
import { furtherSetScrew } from '@/lib/catalog/shafts/hub-limits';

const range = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const si = (key: Parameters<typeof property>[0], name: Parameters<typeof property>[1]) =>
  property(key, name)?.si ?? Number.NaN;

const fit = {
  d: 8e-3,
  d_o: 20e-3,
  d_i: 0,
  E_o: si('petg_fdm', 'E_xy'),
  nu_o: si('petg_fdm', 'poisson'),
  E_i: si('steel_c45', 'E_xy'),
  nu_i: si('steel_c45', 'poisson'),
};

it('a steel shaft in a PETG hub: the hub alone gives, worked by hand', () => {
  // Against 1.9 GPa steel is stiff: p = δ E/(d ((D² + d²)/(D² − d²) + ν)) = 0.05/8 × 1900/(1.381 + 0.38) = 6.74 MPa.
  const p_f = pressFitPressure.of({ ...fit, delta: 50e-6 });
  expect(p_f / 6.74e6).toBeCloseTo(1, 1);
  expect(p_f).toBeLessThan(6.75e6);
  expect(hubHoopStress.of({ p_f, d: fit.d, d_o: fit.d_o }) / p_f).toBeCloseTo(464 / 336, 9);
});

it('keeps a fifth of its torque when a fifth of its pressure is left after creep', () => {
  const p_f = pressFitPressure.of({ ...fit, delta: 50e-6 });
  const at = { mu: 0.2, d: fit.d, l: 10e-3 };
  const fresh = pressFitTorque.of({ ...at, p_f });
  const left = pressFitTorque.of({ ...at, p_f: relaxedPressure.of({ s_c: 0.2, p_f }) });
  expect(left / fresh).toBeCloseTo(0.2, 12);
});

it('loosens when warm where the hub expands more, to nothing but not below (seed 8)', () => {
  fc.assert(
    fc.property(range(0, 60), range(5e-6, 100e-6), (warmer, delta) => {
      const g = { delta, alpha_o: 70e-6, alpha_i: 11.5e-6, d: 8e-3, T_1: 293.15, T_2: 293.15 + warmer };
      const left = warmInterference.of(g);
      // Independent: free diameters of hub and shaft at both temperatures.
      const bore = (g.d - delta) * (1 + 70e-6 * warmer);
      const shaft = g.d * (1 + 11.5e-6 * warmer);
      expect(Math.abs(left - Math.max(shaft - bore, 0))).toBeLessThan(5e-7);
      expect(left).toBeGreaterThanOrEqual(0);
      expect(left).toBeLessThanOrEqual(delta);
    }),
    { seed: 8 },
  );
});

it('tightens when cold: the hoop stress to look at is that of the coldest day', () => {
  const cold = warmInterference.of({
    delta: 50e-6,
    alpha_o: 70e-6,
    alpha_i: 11.5e-6,
    d: 8e-3,
    T_1: 293.15,
    T_2: 253.15,
  });
  expect(cold).toBeCloseTo(50e-6 + 58.5e-6 * 8e-3 * 40, 9);
});

it('a clamp that touches along two lines holds as two blocks pressed by its screws', () => {
  const F = clampForce.of({ n: 2, F_i: 1000 });
  // Friction at two lines, each pressed by F, on the radius: 2 × μ F × d/2.
  const T = clampHubTorque.of({ k_cl: clampPressure.line, mu: 0.15, F, d: 8e-3 });
  expect(T).toBeCloseTo(2 * 0.15 * 2000 * 4e-3, 12);
  expect(clampBorePressure.of({ F, d: 8e-3, l: 10e-3 })).toBeCloseTo(25e6, 3);
});

it('a second set screw adds less than the first, and each further one as much', () => {
  const force = (n: number) => setScrewForce.of({ F_1: 1000, s_2: furtherSetScrew.value, n });
  expect(force(1)).toBe(1000);
  expect(force(2)).toBeCloseTo(1300, 9);
  expect(setScrewTorque.of({ k_pt: 1, F_h: force(3), d: 10e-3 })).toBeCloseTo(8, 9);
});

it('asks more of a hub by the shock factor of the teeth', () => {
  expect(hubTorque.of({ K_A: 1.25, T: 8 })).toBe(10);
});

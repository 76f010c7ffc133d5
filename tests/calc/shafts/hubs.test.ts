/** Hubs: press fits against Lamé's equations solved afresh, keys both ways, and who holds more than whom. */
import fc from 'fast-check';
import { lusolve } from 'mathjs';
import { expect, it } from 'vitest';
import {
  clampPressure,
  hubEquivalentStress,
  hubHoopStress,
  pressFitForce,
  pressFitPressure,
  pressFitTorque,
} from '@/lib/calc/shafts/hubs/friction';
import { flatWidth, keyPressure, keyPressureTorque, splineTorque } from '@/lib/calc/shafts/hubs/positive';
import { keySource, keywayPressure, parallelKey } from '@/lib/catalog/shafts/keys';
import { cupHolding, setScrewFactor, setScrewSource } from '@/lib/catalog/shafts/set-screws';

const range = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** u = A r + B/r in either ring, plane stress; free inner and outer faces, equal pressure, interference between. */
function rings(g: Parameters<typeof pressFitPressure.of>[0]): { readonly p: number; readonly hoop: number } {
  const [ri, r, ro] = [g.d_i / 2, g.d / 2, g.d_o / 2];
  const radial = (E: number, nu: number, at: number): [number, number] => [
    E / (1 - nu),
    -E / ((1 + nu) * at ** 2),
  ];
  const hoopOf = (E: number, nu: number, at: number): [number, number] => [
    E / (1 - nu),
    E / ((1 + nu) * at ** 2),
  ];
  const inner = radial(g.E_i, g.nu_i, r);
  const outer = radial(g.E_o, g.nu_o, r);
  const solved = lusolve(
    [
      [...radial(g.E_i, g.nu_i, ri), 0, 0],
      [0, 0, ...radial(g.E_o, g.nu_o, ro)],
      [...inner, -outer[0], -outer[1]],
      [-r, -1 / r, r, 1 / r],
    ],
    [0, 0, 0, g.delta / 2],
  ) as unknown as number[][]; // mathjs types the solution loosely; given arrays it returns a column as an array
  const [, , A = [], B = []] = solved;
  const at = ([a, b]: [number, number]) => a * (A[0] ?? Number.NaN) + b * (B[0] ?? Number.NaN);
  return { p: -at(outer), hoop: at(hoopOf(g.E_o, g.nu_o, r)) };
}

it('presses as Lamé’s rings do when their equations are solved by a general library (seed 1852)', () => {
  fc.assert(
    fc.property(range(0.2, 0.8), range(1.3, 4), range(1, 200), (bore, wall, soft) => {
      const d = 8e-3;
      const g = {
        delta: 20e-6,
        d,
        d_o: wall * d,
        d_i: bore * d,
        E_o: 210e9 / soft,
        nu_o: 0.38,
        E_i: 210e9,
        nu_i: 0.3,
      };
      const p_f = pressFitPressure.of(g);
      const { p, hoop } = rings(g);
      expect(Math.abs(p_f / p - 1)).toBeLessThan(1e-9);
      expect(Math.abs(hubHoopStress.of({ p_f, ...g }) / hoop - 1)).toBeLessThan(1e-9);
    }),
    { seed: 1852 },
  );
});

it('strains the bore of a hub more than its hoop stress alone, and holds torque as force times radius', () => {
  const p_f = 30e6;
  const sigma_t = hubHoopStress.of({ p_f, d: 8e-3, d_o: 16e-3 });
  // d_o = 2 d: (4 + 1)/(4 − 1) of the pressure; by hand √(25/9 + 5/3 + 1) = 2.333.
  expect(sigma_t).toBeCloseTo(50e6, 3);
  expect(hubEquivalentStress.of({ sigma_t, p_f }) / p_f).toBeCloseTo(7 / 3, 9);
  const g = { mu: 0.12, p_f, d: 8e-3, l: 10e-3 };
  expect(pressFitTorque.of(g)).toBeCloseTo(pressFitForce.of(g) * 4e-3, 12);
});

it('presses a key with what its torque was found from, and finds no key where the table has none', () => {
  const key = parallelKey(12);
  expect(key?.b).toBe(4);
  expect(parallelKey(6)).toBeUndefined();
  expect(parallelKey(30.1)).toBeUndefined();
  const g = { d: 12e-3, h: 4e-3, t_1: 2.5e-3, l: 12e-3 };
  const T = keyPressureTorque.of({ ...g, p: keywayPressure.print.value });
  expect(keyPressure.of({ ...g, T })).toBeCloseTo(keywayPressure.print.value, 3);
  expect(T).toBeLessThan(keyPressureTorque.of({ ...g, p: keywayPressure.aluminium.value }));
  expect(keywayPressure.castIron.value).toBeLessThan(keywayPressure.steel.value);
  expect(keySource.basis).toBe('memory');
});

it('reads metric set screws between the inch sizes and nothing beyond them', () => {
  // M5 lies between #10 (4.83 mm) and 1/4 in (6.35 mm): more than 540 lbf (2402 N), less than 1000 lbf (4448 N).
  const holding = cupHolding(5e-3) ?? Number.NaN;
  expect(holding).toBeGreaterThan(2402);
  expect(holding).toBeLessThan(4448);
  expect(cupHolding(2e-3)).toBeUndefined();
  expect(cupHolding(16e-3)).toBeUndefined();
  expect(setScrewSource.source).toContain('Table 7-4');
  expect(setScrewFactor.swinging.value).toBeGreaterThan(setScrewFactor.steady.value);
});

it('orders clamp hubs: two lines hold least, even pressure most', () => {
  expect(clampPressure.line).toBeLessThan(clampPressure.cosine);
  expect(clampPressure.cosine).toBeLessThan(clampPressure.even);
});

it('finds the chord of a flat, and one spline tooth as a key on the mean diameter', () => {
  // 10 mm shaft, 2 mm deep: half chord √(2 × 8) = 4 mm.
  expect(flatWidth.of({ s: 2e-3, d: 10e-3 })).toBeCloseTo(8e-3, 12);
  const T = splineTorque.of({ s_z: 1, z: 1, p: 10e6, h_b: 1.5e-3, l: 12e-3, d_m: 12e-3 });
  expect(T).toBeCloseTo(keyPressureTorque.of({ d: 12e-3, h: 4e-3, t_1: 2.5e-3, l: 12e-3, p: 10e6 }), 12);
});

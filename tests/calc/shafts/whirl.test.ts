/** Critical speeds between Dunkerley and Rayleigh, the exact one from the eigenvalues of a general library. */
import fc from 'fast-check';
import { eigs } from 'mathjs';
import { expect, it } from 'vitest';
import { type Beam, deflectionAt } from '@/lib/calc/shafts/beam/beam';
import {
  areaMoment,
  discMass,
  massPerLength,
  overhangLeft,
  overhangRight,
  shaftLength,
  shaftMass,
} from '@/lib/calc/shafts/stiffness';
import { giveBetween, giveBeyond } from '@/lib/calc/shafts/whirl/give';
import * as whirl from '@/lib/calc/shafts/whirl/speed';
import { solveByElements } from './beam-elements';

const E = 207e9;
const I = areaMoment.of({ d: 8e-3, d_i: 0 });
const g_n = 9.80665;

interface Mass {
  readonly x: number;
  readonly m: number;
}

/** Deflection at `x` under 1 N at `a`, by finite elements. */
function give(l: number, a: number, x: number): number {
  const beam: Beam = { x_A: 0, x_B: l, E, I, loads: [{ a, F: 1, M_0: 0 }] };
  return solveByElements(beam, [x]).nodes.find((n) => n.x === x)?.y ?? Number.NaN;
}

/** First critical speed of point masses: 1/ω² is the greatest eigenvalue of √m give √m. */
function exactSpeed(l: number, masses: readonly Mass[]): number {
  const matrix = masses.map((p) => masses.map((q) => Math.sqrt(p.m * q.m) * give(l, q.x, p.x)));
  const even = matrix.map((row, i) => row.map((v, j) => (v + (matrix[j]?.[i] ?? Number.NaN)) / 2));
  const values = eigs(even, { eigenvectors: false }).values as unknown as number[]; // real and symmetric, so an array of numbers
  return 1 / Math.sqrt(Math.max(...values));
}

const own = (l: number, x: number) =>
  x >= 0 && x <= l ? giveBetween.of({ a: x, l, E, I }) : giveBeyond.of({ c: x < 0 ? -x : x - l, l, E, I });

function dunkerley(l: number, masses: readonly Mass[]): number {
  const D_w = masses.reduce((D, { x, m }) => whirl.dunkerleySum.of({ D_before: D, m, c_ii: own(l, x) }), 0);
  return whirl.dunkerleySpeed.of({ D_w });
}

function rayleigh(l: number, masses: readonly Mass[]): number {
  // Weights beyond a bearing act upwards, so that all masses deflect the same way as in the first whirl.
  const loads = masses.map(({ x, m }) => ({ a: x, F: (x < 0 || x > l ? 1 : -1) * m * g_n, M_0: 0 }));
  const beam: Beam = { x_A: 0, x_B: l, E, I, loads };
  let [S_1, S_2] = [0, 0];
  for (const { x, m } of masses) {
    const y = Math.abs(deflectionAt(beam, x));
    S_1 = whirl.rayleighFirst.of({ S_before: S_1, m, y });
    S_2 = whirl.rayleighSecond.of({ S_before: S_2, m, y });
  }
  return whirl.rayleighSpeed.of({ g_n, S_1, S_2 });
}

const l = 0.08;
const mass = fc.record({
  x: fc.integer({ min: 1, max: 24 }).map((i) => i * 5e-3),
  m: fc.double({ min: 0.01, max: 0.5, noNaN: true }),
});
const several = fc
  .uniqueArray(mass, { minLength: 1, maxLength: 4, selector: ({ x }) => x })
  .filter((list) => list.some(({ x }) => x !== l));

it('gives under its own force as finite elements do, between the bearings and beyond either (seed 1894)', () => {
  for (const x of [-0.03, 0.01, 0.04, 0.07, 0.11]) expect(own(l, x) / give(l, x, x)).toBeCloseTo(1, 7);
});

it('never whips below Dunkerley’s speed nor above Rayleigh’s (seed 1895)', () => {
  fc.assert(
    fc.property(several, (masses) => {
      const exact = exactSpeed(l, masses);
      expect(dunkerley(l, masses)).toBeLessThanOrEqual(exact * (1 + 1e-6));
      expect(rayleigh(l, masses)).toBeGreaterThanOrEqual(exact * (1 - 1e-6));
    }),
    { seed: 1895, numRuns: 60 },
  );
});

it('finds one mass alone exactly, both ways', () => {
  for (const x of [0.02, 0.04, 0.1]) {
    const alone = [{ x, m: 0.2 }];
    expect(dunkerley(l, alone) / exactSpeed(l, alone)).toBeCloseTo(1, 6);
    expect(rayleigh(l, alone) / exactSpeed(l, alone)).toBeCloseTo(1, 6);
  }
});

it('counts the shaft itself as many small masses along it, ends included, and stays below the exact bare span', () => {
  const m_l = massPerLength.of({ rho: 7850, d: 8e-3, d_i: 0 });
  expect(shaftMass.of({ m_l, l: 1 })).toBeCloseTo(0.3946, 3); // 8 mm round steel, 0.395 kg/m in stock tables
  const part = (from: number, to: number) => {
    const n = 4000;
    const step = (to - from) / n;
    return Array.from({ length: n }, (_, i) => own(l, from + (i + 0.5) * step) * m_l * step).reduce(
      (a, b) => a + b,
      0,
    );
  };
  const D_span = whirl.dunkerleySpan.of({ m_l, l, E, I });
  const D_left = whirl.dunkerleyEnd.of({ m_l, c: 0.02, l, E, I });
  const D_right = whirl.dunkerleyEnd.of({ m_l, c: 0.03, l, E, I });
  expect(D_span / part(0, l)).toBeCloseTo(1, 5);
  expect(D_left / part(-0.02, 0)).toBeCloseTo(1, 5);
  expect(D_right / part(l, l + 0.03)).toBeCloseTo(1, 5);
  const D_w = whirl.dunkerleyTotal.of({ D_w: 0, D_span, D_left: 0, D_right: 0 });
  // The bare span between two bearings whips at π² √(E I/(m l⁴)) (Roark, from memory).
  const bare = Math.PI ** 2 * Math.sqrt((E * I) / (m_l * l ** 4));
  expect(whirl.dunkerleySpeed.of({ D_w }) / bare).toBeCloseTo(Math.sqrt(90) / Math.PI ** 2, 9);
});

it('is as long as its outermost parts stand apart, ends on either side', () => {
  const [x_1, x_2] = [-0.02, 0.11];
  const c_A = overhangLeft.of({ x_A: 0, x_1, x_2 });
  const c_B = overhangRight.of({ x_B: l, x_1, x_2 });
  expect([c_A, c_B]).toEqual([expect.closeTo(0.02, 12), expect.closeTo(0.03, 12)]);
  expect(shaftLength.of({ c_A, l, c_B })).toBeCloseTo(0.13, 12);
  expect(overhangLeft.of({ x_A: 0, x_1: 0.01, x_2: 0.05 })).toBe(0);
  expect(overhangRight.of({ x_B: l, x_1: 0.01, x_2: 0.05 })).toBe(0);
  // A disc is a short shaft.
  const m_l = massPerLength.of({ rho: 7850, d: 0.06, d_i: 0 });
  expect(discMass.of({ rho: 7850, d: 0.06, b: 0.01 })).toBeCloseTo(shaftMass.of({ m_l, l: 0.01 }), 12);
});

// Load factors of metal pairs against the mechanics behind them.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as load from '@/lib/calc/gears/strength/load-factors';
import { dynamicConstants } from '@/lib/catalog/gears';
import { many, range, relative } from './draws';

describe('the dynamic factor', () => {
  const g = { K_1: 39.1e3, K_A: 1, F_t: 2000, b: 0.01, w_0: 1e5, K_2: 0.0193, z_1: 20, v_0: 100, u: 3 };
  const at = (change: Partial<typeof g> & { v: number }) => load.dynamicFactor.of({ ...g, ...change });

  it('is one at rest and grows with the speed in proportion', () => {
    expect(at({ v: 0 })).toBe(1);
    expect(at({ v: 4 }) - 1).toBeCloseTo(2 * (at({ v: 2 }) - 1), 12);
  });

  it('is higher for coarser grades, and for spur than for helical teeth', () => {
    const { spur, helical } = dynamicConstants;
    for (const kind of [spur, helical]) {
      const constants = Object.values(kind.K_1);
      expect([...constants].sort((a, b) => a - b)).toEqual(constants);
    }
    for (const grade of [6, 7, 8, 9, 10, 11, 12] as const)
      expect(at({ v: 3, K_1: spur.K_1[grade], K_2: spur.K_2 })).toBeGreaterThan(
        at({ v: 3, K_1: helical.K_1[grade], K_2: helical.K_2 }),
      );
  });

  it('does not grow without bound as the load vanishes: 100 N/mm are counted at least', () => {
    expect(at({ v: 3, F_t: 1 })).toBe(at({ v: 3, F_t: 1000 }));
    expect(at({ v: 3, F_t: 1 })).toBeGreaterThan(at({ v: 3, F_t: 4000 }));
  });
});

/**
 * Independent derivation: a wedge-shaped gap between two straight edges, a bed of springs between them, pressed together
 * until the springs carry the load. The width is cut into strips and the approach found by halving.
 */
function unevenness(F_beta: number, c: number, w: number): number {
  const strips = 2000;
  const carried = (approach: number) => {
    let sum = 0;
    for (let i = 0; i < strips; i++) sum += Math.max(0, approach - (F_beta * (i + 0.5)) / strips) / strips;
    return sum * c;
  };
  let [low, high] = [0, w / c + F_beta];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (carried(middle) < w) low = middle;
    else high = middle;
  }
  return (c * low) / w;
}

describe('the face load factor', () => {
  it('is that of a bed of springs under a wedge, closed or not', () => {
    fc.assert(
      fc.property(range(1e-6, 5e-5), range(1e9, 2e10), range(2e4, 4e5), (F_beta, c_gamma, w) => {
        const K = load.faceLoadFactor.of({ F_beta, c_gamma, w });
        expect(relative(K, unevenness(F_beta, c_gamma, w))).toBeLessThan(2e-3);
      }),
      { seed: 23, numRuns: 60 },
    );
  });

  it('is 2 at the gap that the load just closes, from either side', () => {
    const at = (F_beta: number) => load.faceLoadFactor.of({ F_beta, c_gamma: 2e10, w: 1e5 });
    expect(at(1e-5)).toBeCloseTo(2, 12);
    expect(at(1.0001e-5)).toBeCloseTo(2, 3);
  });

  it('weighs less on the root, and the less the narrower the face', () => {
    const at = (b: number) => load.rootFaceLoadFactor.of({ K_Hbeta: 1.8, h: 2e-3, b });
    expect(at(0.02)).toBeLessThan(1.8);
    expect(at(0.01)).toBeLessThan(at(0.02));
    // Faces narrower than three tooth depths count as three.
    expect(at(0.001)).toBe(at(0.006));
  });

  it('keeps the gap of a hard pair, and loses that of a steel at its 320 MPa whole', () => {
    const left = (sigma_Hlim: number) =>
      load.runInMisalignment.of({ F_beta: 1e-5, sigma_run: 3.2e8, sigma_Hlim });
    expect(left(3.2e8)).toBe(0);
    expect(left(6.4e8)).toBeCloseTo(5e-6, 15);
    expect(left(1.5e9)).toBeGreaterThan(7e-6);
  });

  it('leaves a compliant plastic mesh nearly alone', () => {
    const F_beta = load.meshMisalignment.of({ b: 0.01, psi: 0.001 });
    expect(load.faceLoadFactor.of({ F_beta, c_gamma: 2e10 * (2500 / 206000), w: 3e4 })).toBeLessThan(1.05);
  });
});

describe('the pitch deviation', () => {
  // ISO 1328-1:1995, Table 1 (from memory): grade 5, m 2 to 3.5, d 20 to 50: 5.5 µm; grade 8: 15 µm. The table is worked
  // for the geometric means of its ranges and rounded.
  const at = (Q: number) =>
    load.pitchDeviation.of({
      m_n: Math.sqrt(2 * 3.5) * 1e-3,
      d: Math.sqrt(20 * 50) * 1e-3,
      Q,
      l_0: 1e-3,
      f_0: 1e-6,
    });

  it('is that of the standard’s table within its rounding', () => {
    expect(at(5) * 1e6).toBeCloseTo(5.5, 0);
    expect(Math.abs(at(8) * 1e6 - 15)).toBeLessThan(0.75);
  });

  it('doubles every two grades', () => {
    expect(at(10) / at(8)).toBeCloseTo(2, 12);
  });
});

describe('the transverse load factor', () => {
  const g = { eps_gamma: 1.6, c_gamma: 2e10, w_t: 1e5 };

  it('never falls below one nor rises above one pair that carries all', () => {
    fc.assert(
      fc.property(range(1, 4), range(0, 1e-4), range(1e3, 1e6), range(1, 3), (eps_gamma, f_pb, w_t, cap) => {
        const K = load.transverseLoadFactor.of({ ...g, eps_gamma, f_pb, w_t, cap });
        expect(K).toBeGreaterThanOrEqual(1);
        expect(K).toBeLessThanOrEqual(cap);
      }),
      many,
    );
  });

  it('passes from one formula to the other at a total contact ratio of 2 without a step', () => {
    const at = (eps_gamma: number) => load.transverseLoadFactor.of({ ...g, eps_gamma, f_pb: 5e-6, cap: 9 });
    expect(at(2 + 1e-9)).toBeCloseTo(at(2), 6);
  });

  it('at its cap takes back what the contact ratio factor of the root gave a spur pair', () => {
    const cap = load.rootLoadCap.of({ eps_gamma: 1.6, eps_alpha: 1.6, Y_eps: 0.7 });
    expect(load.transverseLoadFactor.of({ ...g, f_pb: 1, cap }) * 0.7).toBeCloseTo(1, 12);
    const flank = load.flankLoadCap.of({ eps_gamma: 1.6, eps_alpha: 1.6, Z_eps: 0.9 });
    expect(flank * 0.9 ** 2).toBeCloseTo(1, 12);
  });
});

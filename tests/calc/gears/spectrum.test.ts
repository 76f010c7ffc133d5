// Load spectra: Miner's sum, what the equivalent cycles promise of it, and mean stress against Goodman's line.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { meanStressFactor } from '@/lib/calc/gears/planetary/loads';
import * as spectrum from '@/lib/calc/gears/service/spectrum';
import { fatigueFraction, fatigueLife } from '@/lib/calc/gears/strength/allowable';
import { many, range, relative } from './draws';

interface Step {
  readonly s: number;
  readonly T: number;
}

const line = { f_4: 0.6, f_5: 0.42, f_6: 0.3 };

function together(steps: readonly Step[], N_L: number, p: number): number {
  const T_w = Math.max(...steps.map((step) => step.T));
  let N = 0;
  for (const { s, T } of steps) {
    const tau = spectrum.relativeSeverity.of({ sigma: T, Y_M: 1, sigma_w: T_w, Y_Mw: 1 });
    N = spectrum.equivalentCycles.of({ N_before: N, s, N_L, tau, p });
  }
  return N;
}

function damage(shares: readonly { readonly s: number; readonly f: number }[], N_L: number): number {
  return shares.reduce((D_before, { s, f }) => {
    const D_i = spectrum.damageOfStep.of({ s, N_L, N_F: fatigueLife.of({ ...line, f }) });
    return spectrum.damageSum.of({ D_before, D_i });
  }, 0);
}

const steps = fc
  .array(fc.record({ weight: range(0.05, 1), T: range(0.2, 1) }), { minLength: 1, maxLength: 6 })
  .map((list) => {
    const all = list.reduce((sum, { weight }) => sum + weight, 0);
    return list.map(({ weight, T }) => ({ s: weight / all, T }));
  });

describe('equivalent cycles', () => {
  const p = spectrum.steepestExponent.of(line);

  it('are the cycles themselves when every move is alike, and only those of the hard moves when the rest is idle', () => {
    expect(together([{ s: 1, T: 3 }], 1e6, p)).toBe(1e6);
    expect(
      together(
        [
          { s: 0.1, T: 3 },
          { s: 0.9, T: 0 },
        ],
        1e6,
        p,
      ),
    ).toBeCloseTo(1e5, 6);
  });

  it('never promise more than Miner’s sum allows: loaded to the limit they give, the damage is one at most', () => {
    fc.assert(
      fc.property(steps, range(4, 8), (list, exponent) => {
        const N_L = 10 ** exponent;
        const T_w = Math.max(...list.map(({ T }) => T));
        const limit = fatigueFraction.of({ ...line, N_L: together(list, N_L, p) });
        const D = damage(
          list.map(({ s, T }) => ({ s, f: (limit * T) / T_w })),
          N_L,
        );
        expect(D).toBeLessThanOrEqual(1 + 1e-9);
      }),
      many,
    );
  });

  it('on a single straight line give a damage of exactly one at the limit', () => {
    const straight = { f_4: 1e4 ** -0.1, f_5: 1e5 ** -0.1, f_6: 1e6 ** -0.1 };
    const q = spectrum.steepestExponent.of(straight);
    expect(q).toBeCloseTo(10, 9);
    const list = [
      { s: 0.2, T: 1 },
      { s: 0.5, T: 0.8 },
      { s: 0.3, T: 0.5 },
    ];
    const limit = fatigueFraction.of({ ...straight, N_L: together(list, 1e6, q) });
    const D = list.reduce(
      (sum, { s, T }) =>
        sum + spectrum.damageOfStep.of({ s, N_L: 1e6, N_F: fatigueLife.of({ ...straight, f: limit * T }) }),
      0,
    );
    expect(D).toBeCloseTo(1, 9);
  });

  // Independent: the root mean of ISO 6336-6, worked in one expression.
  it('and the equivalent torque belong together: (Σ s T^p)^(1/p)', () => {
    const list = [
      { s: 0.2, T: 5 },
      { s: 0.8, T: 3 },
    ];
    const N_eq = together(list, 1e6, 6.25);
    const T_eq = spectrum.equivalentTorque.of({ T_w: 5, N_eq, N_L: 1e6, p: 6.25 });
    expect(relative(T_eq, (0.2 * 5 ** 6.25 + 0.8 * 3 ** 6.25) ** (1 / 6.25))).toBeLessThan(1e-12);
  });
});

describe('the damage sum', () => {
  // The rule as Palmgren and Miner state it: 10⁴ of 2·10⁴ cycles and 10⁵ of 4·10⁵ use up three quarters of the life.
  it('adds the parts of life used', () => {
    const first = spectrum.damageOfStep.of({ s: 1 / 11, N_L: 1.1e5, N_F: 2e4 });
    const second = spectrum.damageOfStep.of({ s: 10 / 11, N_L: 1.1e5, N_F: 4e5 });
    expect(spectrum.damageSum.of({ D_before: first, D_i: second })).toBeCloseTo(0.75, 12);
  });

  it('does not depend on the order of the steps', () => {
    const a = { s: 0.3, f: 0.5 };
    const b = { s: 0.7, f: 0.35 };
    expect(damage([a, b], 1e6)).toBeCloseTo(damage([b, a], 1e6), 12);
  });
});

describe('mean stress', () => {
  // Independent derivation: on Goodman's line a/σ_w + m/R = 1 in strengths over the static one, the stress of a cycle that
  // runs from R·σ to σ has amplitude σ(1 − R)/2 and mean σ(1 + R)/2.
  it('follows Goodman’s line between the swelling strength and the static one, down to full reversal', () => {
    fc.assert(
      fc.property(range(0.1, 0.95), range(-1, 0), (f_N, R) => {
        const reversed = f_N / 2 / (1 - f_N / 2);
        const goodman = 1 / ((1 - R) / (2 * reversed) + (1 + R) / 2);
        const M = spectrum.goodmanSensitivity.of({ f_N });
        // The factor of the standard is linear in R between R = 0 and R = −1, Goodman's line too.
        expect(relative(meanStressFactor.of({ R, M }), goodman / f_N)).toBeLessThan(1e-9);
      }),
      many,
    );
  });

  it('takes nothing from a stress that swells, and more the further it reverses', () => {
    const at = (R: number) => meanStressFactor.of({ R, M: 0.3 });
    expect(at(0)).toBe(1);
    // Steel with M 0.3: a fully reversed stress of 0.65, an idler of 0.61 (the usual round figure is 0.7).
    expect(at(-1)).toBeCloseTo(0.65, 2);
    expect(at(-1.2)).toBeCloseTo(0.607, 3);
  });

  it('takes nothing from the static strength: a single load does not care for the one before', () => {
    const M = spectrum.goodmanSensitivity.of({ f_N: 1 });
    expect(meanStressFactor.of({ R: -1.2, M })).toBe(1);
  });
});

describe('stress of a step', () => {
  it('goes with the torque at the root and with its square root on the flank', () => {
    expect(spectrum.rootStressOfStep.of({ sigma_F: 80e6, T: 2, T_peak: 8 })).toBe(20e6);
    expect(spectrum.flankPressureOfStep.of({ sigma_H: 80e6, T: 2, T_peak: 8 })).toBe(40e6);
  });
});

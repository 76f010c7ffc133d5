/** What flows back: shares against a search of the test's own, energy against a swing worked in steps. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loweringEnergy } from '@/lib/calc/hazard/reach';
import {
  brakingPower,
  loweringLoss,
  meanPowerBack,
  returnedEnergy,
  shareBack,
} from '@/lib/calc/supply/regeneration';
import { busCapacitance, busVoltageAfterBraking } from '@/lib/calc/supply/sag';

const range = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('the share of a weight’s power that comes back', () => {
  it('is the greatest over all efficiencies that the train may have backwards (independent, seed 3)', () => {
    fc.assert(
      fc.property(range(0.05, 1), range(0.01, 20), (eta, x_cu) => {
        let best = 0;
        for (let k = 0; k <= 4000; k += 1) {
          const e = (eta * k) / 4000;
          best = Math.max(best, e - x_cu * e ** 2);
        }
        expect(shareBack.of({ eta, x_cu })).toBeCloseTo(best, 5);
      }),
      { seed: 3 },
    );
  });

  it('is all of it without copper loss, and never more than the efficiency', () => {
    expect(shareBack.of({ eta: 0.8, x_cu: 0 })).toBe(0.8);
    expect(shareBack.of({ eta: 0.8, x_cu: 3 })).toBeLessThan(0.1);
  });

  it('falls short of the power by the copper loss at the current that the torque asks (independent)', () => {
    const g = { R: 0.05, T: 18, N: 60, K_t: 0.05, omega: 1.5 };
    const I = g.T / (g.N * g.K_t);
    const power = g.T * g.omega;
    expect(power - g.R * I ** 2).toBeCloseTo(power * (1 - loweringLoss.of(g)), 9);
  });
});

describe('a load that is lowered', () => {
  it('gives up what an arm about level gives up, summed in steps (independent)', () => {
    const phi = 1.9;
    let work = 0;
    for (let k = 0; k < 20000; k += 1)
      work += 12 * Math.cos(-phi / 2 + ((k + 0.5) * phi) / 20000) * (phi / 20000);
    expect(loweringEnergy.of({ T_g: 12, phi })).toBeCloseTo(work, 6);
  });

  it('on a drum pulls all the way', () => {
    expect(loweringEnergy.of({ T_g: 12, phi: 15 })).toBe(180);
  });
});

it('adds what load, height and rotor give back', () => {
  expect(returnedEnergy.of({ eta: 0.5, E_L: 4, s_back: 0.25, E_g: 8, E_m: 1 })).toBe(5);
  const power = { s_back: 0.25, T_g: 8, eta: 0.5, J_L: 2, N: 10, J_m: 0.01, alpha_out: 3, omega: 2 };
  expect(brakingPower.of(power)).toBeCloseTo((2 + (1 + 1) * 3) * 2, 12);
  expect(meanPowerBack.of({ E_back: 10, t_move: 1, t_rest: 4 })).toBe(2);
});

it('raises the voltage to the limit that the capacitance was chosen for', () => {
  const C = busCapacitance.of({ eta: 1, E_k: 3, U_lim: 32, U_0: 24 });
  expect(busVoltageAfterBraking.of({ U_0: 24, eta: 1, E_k: 3, C })).toBeCloseTo(32, 9);
});

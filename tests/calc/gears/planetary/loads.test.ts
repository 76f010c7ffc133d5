/** Loads of a planetary set against the balance of its torques, its rolling, and the standard's planets bent both ways. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as efficiency from '@/lib/calc/gears/planetary/efficiency';
import * as loads from '@/lib/calc/gears/planetary/loads';
import * as ratios from '@/lib/calc/gears/planetary/ratios';
import * as torques from '@/lib/calc/gears/planetary/torques';
import { many, range, relative } from '../draws';

describe('the held member', () => {
  // Independent derivation: the torques of sun, ring and carrier that the set receives add up to zero.
  it('takes what input and output leave, with the ring held as with the carrier held', () => {
    fc.assert(
      fc.property(range(-8, -1.5), range(0.8, 1), range(0.1, 20), (i_0, eta_0, T_s) => {
        const T_r = torques.ringTorque.of({ i_0, eta_0w: eta_0, T_s });
        const T_c = Math.abs(torques.carrierTorque.of({ T_s, T_r }));
        const eta = efficiency.efficiencySunToCarrier.of({ i_0, eta_0 });
        expect(relative(T_c, T_s * (1 - i_0) * eta)).toBeLessThan(1e-9);
        expect(relative(loads.heldTorque.of({ T_2: T_c, i: 1 - i_0, T_1: T_s }), Math.abs(T_r))).toBeLessThan(
          1e-9,
        );
        expect(relative(loads.heldTorque.of({ T_2: Math.abs(T_r), i: i_0, T_1: T_s }), T_c)).toBeLessThan(
          1e-9,
        );
      }),
      many,
    );
  });
});

describe('the ratio of a set', () => {
  it('turned round is its inverse, and a carrier that is held sends the output backwards', () => {
    const i_0 = ratios.standingRatio.of({ z_r: 54, z_s: 18 });
    expect(i_0).toBe(-3);
    expect(loads.reversedRatio.of({ i: 4 })).toBe(0.25);
    expect(loads.ratioSize.of({ i: i_0 })).toBe(3);
  });
});

describe('the meetings of a tooth', () => {
  // Independent count: step the carrier of a set with its ring held and count which planets pass which tooth.
  it.each([
    [18, 18, 54, 3],
    [16, 20, 56, 4],
  ])('of the sun, by counting passes: %i/%i/%i with %i planets', (z_s, _z_p, z_r, N) => {
    const i = ratios.planetaryRatioRingFixed.of({ z_r, z_s });
    const turns = 10;
    let passes = 0;
    const steps = 200_000;
    let before: number[] | null = null;
    for (let k = 0; k <= steps; k++) {
      const carrier = (turns * k) / steps;
      const sun = carrier * i;
      const sectors = Array.from({ length: N }, (_, p) => Math.floor(sun - carrier - p / N + 1e-9));
      if (before !== null) for (const [p, s] of sectors.entries()) passes += Math.abs(s - (before[p] ?? s));
      before = sectors;
    }
    expect(relative(loads.meetingsPerOutputTurn.of({ i_m: i, i_c: 1, N }) * turns, passes)).toBeLessThan(
      0.02,
    );
  });

  it('of a planet with each mate are those of its own turns past the carrier', () => {
    const [z_s, z_p, z_r] = [18, 18, 54];
    const i = ratios.planetaryRatioRingFixed.of({ z_r, z_s });
    const relativeSpeed = Math.abs(ratios.planetRelativeSpeed.of({ z_s, z_p, omega_s: i, omega_c: 1 }));
    expect(loads.meetingsPerOutputTurn.of({ i_m: 1 + relativeSpeed, i_c: 1, N: 1 })).toBeCloseTo(3, 12);
  });
});

describe('planets that do not share evenly', () => {
  // Independent derivation: the forces of all planets as vectors round the centre.
  it('leave on the centre what the vectors of their forces add up to', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 7 }), range(1, 2), range(10, 500), (N, K_gamma, F_sum) => {
        const most = (F_sum * K_gamma) / N;
        const rest = (F_sum - most) / (N - 1);
        let [x, y] = [0, 0];
        for (let p = 0; p < N; p++) {
          const force = p === 0 ? most : rest;
          x += force * Math.cos((2 * Math.PI * p) / N);
          y += force * Math.sin((2 * Math.PI * p) / N);
        }
        expect(loads.unevenForce.of({ F_sum, K_gamma, N })).toBeCloseTo(Math.hypot(x, y), 6);
      }),
      many,
    );
  });

  it('pass on their share of torque and power', () => {
    const F_t = (2 * torques.sunTorquePerPlanet.of({ T_s: 3, K_gamma: 1.2, N: 3 })) / 18e-3;
    expect(loads.forceTorque.of({ F_t, d: 18e-3 })).toBeCloseTo(1.2, 12);
    expect(loads.planetPower.of({ P: 90, K_gamma: 1.2, N: 3 })).toBeCloseTo(36, 12);
  });

  it('turn on their pins as the relative speed of a set says, with the carrier held as with it turning', () => {
    fc.assert(
      fc.property(range(-50, 50), range(-50, 50), (omega_s, omega_c) => {
        const omega_mc = ratios.relativeToCarrier.of({ omega_m: omega_s, omega_c });
        const spin = loads.planetSpin.of({ omega_mc, z_m: 18, z_p: 24 });
        const relativeSpeed = ratios.planetRelativeSpeed.of({ z_s: 18, z_p: 24, omega_s, omega_c });
        expect(spin).toBeCloseTo(Math.abs(relativeSpeed), 9);
        expect(loads.planetTurns.of({ i_m: omega_s, i_c: omega_c, z_m: 18, z_p: 24 })).toBeCloseTo(spin, 9);
      }),
      many,
    );
  });
});

describe('a planet’s tooth', () => {
  // ISO 6336-3:2006, annex B, and the older rule of seven tenths for full reversal (both from memory).
  it('bent both ways bears 0.7 of a pulsating stress in full reversal and 0.66 as a planet, for a sensitivity of 0.4', () => {
    expect(loads.meanStressFactor.of({ R: -1, M: 0.4 })).toBeCloseTo(0.7, 12);
    expect(loads.meanStressFactor.of({ R: -1.2, M: 0.4 })).toBeCloseTo(0.66, 2);
    expect(loads.meanStressFactor.of({ R: 0, M: 0.4 })).toBe(1);
  });

  // Independent derivation: the straight line of mean stress through full reversal with slope −M, met at the ratio R.
  it('has the amplitude that the line of mean stress allows', () => {
    fc.assert(
      fc.property(range(-1.2, -0.1), range(0.2, 0.6), (R, M) => {
        const reversed = 1;
        const peakAt = (ratio: number) => {
          // amplitude = reversed − M · mean, with mean = peak (1 + R)/2 and amplitude = peak (1 − R)/2
          return reversed / ((1 - ratio) / 2 + (M * (1 + ratio)) / 2);
        };
        expect(loads.meanStressFactor.of({ R, M })).toBeCloseTo(peakAt(R) / peakAt(0), 9);
      }),
      many,
    );
  });
});

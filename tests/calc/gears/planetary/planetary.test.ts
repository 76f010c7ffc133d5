/** Planetary sets against rolling without slip, torque balance and the geometry of the planets. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as arrangement from '@/lib/calc/gears/planetary/arrangement';
import * as efficiency from '@/lib/calc/gears/planetary/efficiency';
import * as ratios from '@/lib/calc/gears/planetary/ratios';
import * as torques from '@/lib/calc/gears/planetary/torques';
import { many, range, relative } from '../draws';

const teeth = fc.integer({ min: 12, max: 60 });

describe('the speeds of a planetary set', () => {
  // Independent derivation: where the pitch circles roll on each other, both gears move at the same speed.
  it('let sun, planets and ring roll on each other without slip', () => {
    fc.assert(
      fc.property(teeth, teeth, range(-50, 50), range(-50, 50), (z_s, z_p, omega_s, omega_r) => {
        const z_r = z_s + 2 * z_p;
        const i_0 = ratios.standingRatio.of({ z_r, z_s });
        const omega_c = ratios.carrierSpeed.of({ omega_s, i_0, omega_r });
        const omega_p = omega_c + ratios.planetRelativeSpeed.of({ z_s, z_p, omega_s, omega_c });
        const pin = (omega_c * (z_s + z_p)) / 2;
        expect(pin - (omega_p * z_p) / 2).toBeCloseTo((omega_s * z_s) / 2, 6);
        expect(pin + (omega_p * z_p) / 2).toBeCloseTo((omega_r * z_r) / 2, 6);
        expect(ratios.sunSpeed.of({ i_0, omega_r, omega_c })).toBeCloseTo(omega_s, 7);
        expect(ratios.ringSpeed.of({ omega_s, i_0, omega_c })).toBeCloseTo(omega_r, 7);
      }),
      many,
    );
  });

  it('give the three ratios with the ring, the sun and the carrier held', () => {
    const [z_s, z_r] = [16, 48];
    const i_0 = ratios.standingRatio.of({ z_r, z_s });
    const ringHeld = 1 / ratios.carrierSpeed.of({ omega_s: 1, i_0, omega_r: 0 });
    const sunHeld = 1 / ratios.carrierSpeed.of({ omega_s: 0, i_0, omega_r: 1 });
    expect(ringHeld).toBeCloseTo(ratios.planetaryRatioRingFixed.of({ z_r, z_s }), 12);
    expect(sunHeld).toBeCloseTo(ratios.planetaryRatioSunFixed.of({ z_s, z_r }), 12);
    expect(1 / ratios.ringSpeed.of({ omega_s: 1, i_0, omega_c: 0 })).toBeCloseTo(i_0, 12);
  });
});

describe('the efficiency of a planetary set', () => {
  type Member = 's' | 'r' | 'c';
  /** Output power over input power from the balance of torques, deciding at the meshes which of sun and ring drives. */
  function balance(i_0: number, eta_0: number, held: Member, drives: Member): number {
    // Torque of the sun 1; the signs of the speeds follow from which member is held and that the driver takes power in.
    const speeds = {
      r: { omega_s: 1 - i_0, omega_r: 0, omega_c: 1 },
      s: { omega_s: 0, omega_r: 1 - 1 / i_0, omega_c: 1 },
      c: { omega_s: i_0, omega_r: 1, omega_c: 0 },
    }[held];
    for (const eta_0w of [eta_0, 1 / eta_0]) {
      const T_r = torques.ringTorque.of({ i_0, eta_0w, T_s: 1 });
      const T_c = torques.carrierTorque.of({ T_s: 1, T_r });
      const power = { s: speeds.omega_s, r: T_r * speeds.omega_r, c: T_c * speeds.omega_c };
      const direction = Math.sign(power[drives]);
      const sunRolling = direction * (speeds.omega_s - speeds.omega_c);
      // The sun drives at the meshes exactly when eta_0 was not turned over; only that choice is consistent.
      if (sunRolling > 0 !== (eta_0w === eta_0)) continue;
      const total = direction * (power.s + power.r + power.c);
      return 1 - total / (direction * power[drives]);
    }
    return Number.NaN;
  }

  const held = [
    ['ring fixed, sun to carrier', 'r', 's', efficiency.efficiencySunToCarrier],
    ['ring fixed, carrier to sun', 'r', 'c', efficiency.efficiencyCarrierToSun],
    ['sun fixed, ring to carrier', 's', 'r', efficiency.efficiencyRingToCarrier],
    ['sun fixed, carrier to ring', 's', 'c', efficiency.efficiencyCarrierToRing],
  ] as const;

  // Independent derivation: the three torques add up to zero, and friction takes its share where the teeth roll.
  it.each(held)('is that of the torque balance: %s', (_, fixed, drives, formula) => {
    fc.assert(
      fc.property(range(-10, -1.2), range(0.7, 0.999), (i_0, eta_0) => {
        expect(relative(formula.of({ i_0, eta_0 }), balance(i_0, eta_0, fixed, drives))).toBeLessThan(1e-9);
      }),
      many,
    );
  });

  it('is that of its two meshes with the carrier fixed, whichever way it is driven', () => {
    const eta_0 = efficiency.standingEfficiency.of({ eta_sp: 0.98, eta_pr: 0.99 });
    expect(eta_0).toBeCloseTo(0.9702, 12);
    expect(balance(-3, eta_0, 'c', 's')).toBeCloseTo(eta_0, 12);
    expect(balance(-3, eta_0, 'c', 'r')).toBeCloseTo(eta_0, 12);
  });

  it('is better than that of the meshes when the carrier turns, as part of the power rides along', () => {
    fc.assert(
      fc.property(range(-10, -1.2), range(0.7, 0.999), (i_0, eta_0) => {
        for (const [, , , formula] of held) expect(formula.of({ i_0, eta_0 })).toBeGreaterThan(eta_0);
      }),
      many,
    );
  });
});

describe('a planetary set goes together', () => {
  // Independent derivation: turn the carrier one step with the ring held; the sun then shows the same teeth again.
  it('wherever the carrier has turned by whole steps, as the sun has then turned by whole teeth', () => {
    fc.assert(
      fc.property(teeth, teeth, fc.integer({ min: 1, max: 40 }), (z_s, z_p, n) => {
        const z_r = z_s + 2 * z_p;
        const step = arrangement.assemblyStep.of({ z_s, z_r });
        const i_0 = ratios.standingRatio.of({ z_r, z_s });
        const sun = ratios.sunSpeed.of({ i_0, omega_r: 0, omega_c: n * step });
        const shown = (sun * z_s) / (2 * Math.PI);
        expect(Math.abs(shown - Math.round(shown))).toBeLessThan(1e-9);
      }),
      many,
    );
  });

  it('with three planets at equal angles for 18/18/54 but not for 17/18/53', () => {
    expect(arrangement.assemblyQuotient.of({ z_s: 18, z_r: 54, N: 3 })).toBe(24);
    expect(Number.isInteger(arrangement.assemblyQuotient.of({ z_s: 17, z_r: 53, N: 3 }))).toBe(false);
  });

  it('only when the ring has the teeth of the sun and two planets, or shifts make the centre distances equal', () => {
    expect(arrangement.coaxialDifference.of({ z_r: 50, z_s: 16, z_p: 18 })).toBe(-2);
    expect(arrangement.coaxialMismatch.of({ a_sp: 0.0342, a_pr: 0.032 })).toBeCloseTo(0.0022, 12);
  });

  // Independent derivation: centres of neighbouring planets as points, less two tip radii.
  it('with the room between neighbouring planets that their centres leave', () => {
    fc.assert(
      fc.property(teeth, teeth, fc.integer({ min: 2, max: 8 }), (z_s, z_p, N) => {
        const a = (z_s + z_p) / 2;
        const d_ap = z_p + 2;
        const next = { x: a * Math.cos((2 * Math.PI) / N), y: a * Math.sin((2 * Math.PI) / N) };
        const apart = Math.hypot(next.x - a, next.y) - d_ap;
        expect(arrangement.planetClearance.of({ a, N, d_ap })).toBeCloseTo(apart, 9);
        expect(arrangement.neighbourMargin.of({ z_s, z_p, N, h_aP: 1 })).toBeCloseTo(apart, 9);
      }),
      many,
    );
  });

  it('with four planets for the 16/16/48 set of the handbook, but not with six', () => {
    expect(arrangement.neighbourMargin.of({ z_s: 16, z_p: 16, N: 4, h_aP: 1 })).toBeGreaterThan(0);
    expect(arrangement.neighbourMargin.of({ z_s: 16, z_p: 16, N: 6, h_aP: 1 })).toBeLessThan(0);
  });
});

describe('the planets', () => {
  // Independent derivation: each planet takes a tooth force from the sun and one from the ring, both the same way.
  it('press on their pins with twice the tangential force of their tooth', () => {
    const [z_s, z_p, z_r, m_n, N, T_s, K_gamma] = [16, 16, 48, 1e-3, 3, 2, 1.1] as const;
    const a = (m_n * (z_s + z_p)) / 2;
    const F_t = (2 * torques.sunTorquePerPlanet.of({ T_s, K_gamma, N })) / (z_s * m_n);
    const T_r = torques.ringTorque.of({ i_0: ratios.standingRatio.of({ z_r, z_s }), eta_0w: 1, T_s });
    const T_c = Math.abs(torques.carrierTorque.of({ T_s, T_r }));
    expect(relative(torques.planetPinForce.of({ T_c, K_gamma, N, a }), 2 * F_t)).toBeLessThan(1e-12);
    expect(T_c).toBeCloseTo(T_s * ratios.planetaryRatioRingFixed.of({ z_r, z_s }), 12);
  });

  // Table of mesh load factors for four, five and six planets in IEC 61400-4 and AGMA 6123 (from memory), two decimals.
  it.each([
    [3, 1],
    [4, 1.25],
    [5, 1.35],
    [6, 1.44],
  ])('of a set with %i share their load with a factor of about %d', (N, K_gamma) => {
    expect(Math.abs(torques.loadSharingFactor.of({ N }) - K_gamma)).toBeLessThan(0.011);
  });

  it('of a stiff set carry as if one of them ran idle: a half on each of three, all on one of two', () => {
    const share = (N: number) => torques.loadSharingStiff.of({ K_f: 1, N }) / N;
    expect(share(2)).toBe(1);
    expect(share(3)).toBeCloseTo(1 / 2, 12);
    expect(share(4)).toBeCloseTo(1 / 3, 12);
  });

  it('load a tooth of a sun with three planets nine times while the carrier of a 4:1 set turns once', () => {
    const t = 1;
    const omega_c = 2 * Math.PI;
    const omega_mc = ratios.relativeToCarrier.of({ omega_m: 4 * omega_c, omega_c });
    expect(torques.planetaryLoadCycles.of({ omega_mc, t, N: 3 })).toBeCloseTo(9, 12);
  });
});

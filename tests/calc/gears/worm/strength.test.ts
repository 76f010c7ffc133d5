/** Worm wheels against the pressure of a cylinder on a flat, the Lewis form of a plain tooth and the balance of power. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lewisFormFactorClosed } from '@/lib/calc/gears/strength/lewis';
import * as friction from '@/lib/calc/gears/worm/efficiency';
import * as shape from '@/lib/calc/gears/worm/geometry';
import * as strength from '@/lib/calc/gears/worm/strength';
import { wormWear } from '@/lib/calc/gears/worm/wear';
import { wormFormFactor, wormFrictionSpeed } from '@/lib/catalog/worms';
import { degree, many, range, relative } from '../draws';

const steel = { E: 210e9, nu: 0.3 };
const bronze = { E: 88.3e9, nu: 0.35 };

const pairs = [
  { z_1: 1, z_2: 40, m_x: 4e-3, d_m1: 40e-3, b_2: 30e-3, T_2: 500 },
  { z_1: 2, z_2: 30, m_x: 1.5e-3, d_m1: 18e-3, b_2: 12e-3, T_2: 12 },
  { z_1: 1, z_2: 50, m_x: 1e-3, d_m1: 16e-3, b_2: 10e-3, T_2: 5 },
] as const;

function work(g: (typeof pairs)[number], K_A = 1) {
  const d_m2 = shape.wormWheelDiameter.of({ z_2: g.z_2, m_x: g.m_x, x_2: 0 });
  const a = shape.wormCentreDistance.of({ d_m1: g.d_m1, d_m2 });
  const gamma_m = shape.leadAngle.of(g);
  const b_e = strength.wormFaceWidth.of(g);
  const E_red = strength.wormReducedModulus.of({
    E_1: steel.E,
    nu_1: steel.nu,
    E_2: bronze.E,
    nu_2: bronze.nu,
  });
  const q_1 = strength.wormDiameterQuotient.of(g);
  const p_m = strength.wormPressureParameter.of({
    x_2: 0,
    u: g.z_2 / g.z_1,
    z_2: g.z_2,
    b_e,
    m_x: g.m_x,
    q_1,
  });
  const sigma_Hm = strength.wormPressure.of({ p_m, K_A, T_2: g.T_2, E_red, a });
  return { d_m2, a, gamma_m, b_e, E_red, sigma_Hm };
}

describe('the flanks of a worm wheel', () => {
  it('of bronze on steel have the reduced modulus of the standard’s table, 140 144 N/mm²', () => {
    // ISO/TR 14521:2010, DIN 3996:1998, table of materials, CuSn12 (from memory).
    expect(relative(work(pairs[0]).E_red, 140144e6)).toBeLessThan(0.001);
  });

  // Independent derivation: in the axial section a rack presses on the wheel's involute. Hertz for a cylinder of that
  // curvature on a flat, on contact lines of about two teeth round the arc that the worm covers.
  it.each(pairs)('are pressed as a cylinder on a flat is, within 25 %: $z_1 to $z_2', (g) => {
    const { d_m2, b_e, E_red, sigma_Hm, gamma_m } = work(g);
    const angle = 20 * degree;
    const F_n = (2 * g.T_2) / d_m2 / (Math.cos(angle) * Math.cos(gamma_m));
    const radius = (d_m2 / 2) * Math.sin(angle);
    const arc = 2 * Math.asin(b_e / g.d_m1 / 1.1);
    const lines = 1.9 * (arc * g.d_m1 * 0.5);
    const hertz = Math.sqrt((F_n * E_red) / 2 / (Math.PI * lines * radius));
    expect(relative(sigma_Hm, hertz)).toBeLessThan(0.25);
  });

  it('are pressed with the root of the torque and of the shocks', () => {
    const [g] = pairs;
    expect(relative(work({ ...g }, 4).sigma_Hm, 2 * work(g).sigma_Hm)).toBeLessThan(1e-12);
  });

  it('count no wider than two thirds of the worm', () => {
    expect(strength.wormFaceWidth.of({ b_2: 20e-3, d_m1: 16e-3 })).toBeCloseTo(10.72e-3, 12);
    expect(strength.wormFaceWidth.of({ b_2: 8e-3, d_m1: 16e-3 })).toBe(8e-3);
  });
});

describe('the root of a worm wheel', () => {
  it('has at 20° the Lewis form factor of a plain gear of thirty teeth, within 2 %', () => {
    const y = wormFormFactor(20 * degree)?.y ?? Number.NaN;
    expect(relative(y * Math.PI, lewisFormFactorClosed.of({ z: 30 }))).toBeLessThan(0.02);
  });

  it('takes the row below between two angles, and none below the table', () => {
    expect(wormFormFactor(22 * degree)?.y).toBe(0.125);
    expect(wormFormFactor(19.995 * degree)?.y).toBe(0.125);
    expect(wormFormFactor(12 * degree)).toBeUndefined();
  });

  // Buckingham's equation by hand: 1000 N over a pitch of 3.14 mm cos 3.58°, 10 mm wide, y 0.125.
  it('bears 255 MPa under 1000 N on 10 mm of module 1', () => {
    const gamma_m = shape.leadAngle.of({ z_1: 1, m_x: 1e-3, d_m1: 16e-3 });
    const p_n = strength.wormNormalPitch.of({ m_x: 1e-3, gamma_m });
    const F_tK = strength.wormPeakForce.of({ F_x1: 800, K_A: 1.25 });
    const sigma = strength.wormRootStress.of({ F_tK, p_n, b_e: 10e-3, y: 0.125 });
    expect(sigma / 1e6).toBeCloseTo(255.2, 0);
  });
});

describe('the friction of a metal worm', () => {
  const at = (v_g: number) => friction.wormFriction.of({ v_g, v_0: wormFrictionSpeed.value });
  const foot = wormFrictionSpeed.value;

  it('falls with speed, and its two branches meet within 3 %', () => {
    expect(relative(at(10 * foot), at(10.001 * foot))).toBeLessThan(0.03);
    fc.assert(
      fc.property(range(0.01, 7), range(1.05, 2), (v, k) => {
        expect(at(k * v)).toBeLessThan(at(v) * 1.001);
      }),
      many,
    );
  });

  // Shigley, Example 13-10 (from memory): f = 0.03 read off its figure at 637 ft/min.
  it('is the 0.03 that the handbook example reads off at 637 ft/min, within 15 %', () => {
    expect(relative(at(637 * foot), 0.03)).toBeLessThan(0.15);
  });
});

describe('the wear of a worm wheel', () => {
  // Independent derivation: friction work of one turn of the worm, from its power lost, spread over the teeth it passes.
  it('is the volume that the work lost to friction takes off, over the flanks of all teeth', () => {
    const [g] = pairs;
    const { gamma_m, b_e, d_m2 } = work(g);
    const [mu, alpha_n, k_w, turns] = [0.06, 20 * degree, 2e-15, 1000];
    const F_x1 = friction.wormAxialForce.of({ T_2: g.T_2, d_m2 });
    const rho_z = friction.wormFrictionAngle.of({ mu, alpha_n });
    const lost =
      (friction.wormTangentialForce.of({ F_x1, gamma_m, rho_z }) - F_x1 * Math.tan(gamma_m)) *
      Math.PI *
      g.d_m1;
    const volume = ((k_w * lost) / mu) * turns;
    const flanks = g.z_2 * b_e * ((2 * g.m_x) / Math.cos(alpha_n));
    const F_r = friction.wormRadialForce.of({ F_x1, alpha_n, gamma_m, mu });
    const F_n = strength.wormNormalForce.of({ F_r, alpha_n });
    const N_L = (turns * g.z_1) / g.z_2;
    const found = wormWear.of({ ...g, k_w, F_n, gamma_m, N_L, b_e, alpha_n });
    expect(relative(found, volume / flanks)).toBeLessThan(1e-9);
  });
});

describe('a worm driven by its wheel', () => {
  // Independent derivation: what the worm's shaft gives out over what the wheel puts in, from the back efficiency.
  it('is turned by the force that the back efficiency leaves', () => {
    fc.assert(
      fc.property(range(0.3, 0.6), range(0.02, 0.25), (gamma_m, rho_z) => {
        const F = strength.wormBackForce.of({ F_x1: 100, gamma_m, rho_z });
        const eta = friction.wormBackEfficiency.of({ gamma_m, rho_z });
        expect(F / (100 * Math.tan(gamma_m))).toBeCloseTo(eta, 12);
      }),
      many,
    );
  });

  it('of one start loses more than half of the power as heat when it drives against friction of 0.1', () => {
    const gamma_m = shape.leadAngle.of({ z_1: 1, m_x: 1e-3, d_m1: 16e-3 });
    const rho_z = friction.wormFrictionAngle.of({ mu: 0.1, alpha_n: 20 * degree });
    const eta = friction.wormEfficiency.of({ gamma_m, rho_z });
    expect(strength.stagePowerLoss.of({ P: 100, eta })).toBeGreaterThan(50);
  });
});

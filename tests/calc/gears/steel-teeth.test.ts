// Steel teeth: the factors of ISO 6336 at their anchors, and the single pair factor against the curvature of the flanks.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as agma from '@/lib/calc/gears/strength/agma';
import { flankPressure, flankPressureMetal } from '@/lib/calc/gears/strength/flank-pressure';
import { metalRootStress, rootStress, rootStressMetal } from '@/lib/calc/gears/strength/root-stress';
import * as flank from '@/lib/calc/gears/strength/steel-flank';
import * as root from '@/lib/calc/gears/strength/steel-root';
import { type GearSteel, gearSteels, steelConstants } from '@/lib/catalog/gear-steels';
import { workPair } from '../../reference/gears/pair';
import { degree, many, range, relative } from './draws';

const { rootLife, flankLife } = steelConstants;
const Y_NT = (N_L: number) =>
  root.rootLifeFactor.of({
    N_L,
    N_S: rootLife.level,
    N_0: rootLife.knee,
    q: rootLife.slope,
    q_e: rootLife.beyond,
  });
const Z_NT = (N_L: number) =>
  flank.flankLifeFactor.of({
    N_L,
    N_S: flankLife.level,
    N_0: flankLife.knee,
    q: flankLife.slope,
    q_e: flankLife.beyond,
  });

describe('life factors', () => {
  // ISO 6336-3:2006, Table 1, through-hardened steel (from memory): 2.5 to 10⁴, 1.0 at 3·10⁶, 0.85 at 10¹⁰.
  it('of the root are those of the standard’s table at its corners', () => {
    for (const N of [1, 1e4]) expect(Y_NT(N)).toBeCloseTo(2.5, 1);
    expect(Y_NT(3e6)).toBe(1);
    expect(Y_NT(1e10)).toBeCloseTo(0.85, 2);
  });

  // ISO 6336-2:2006, Table 2, no pitting (from memory): 1.6 to 10⁵, 1.0 at 5·10⁷, 0.85 at 10¹⁰.
  it('of the flank are those of the standard’s table at its corners', () => {
    for (const N of [1, 1e5]) expect(Z_NT(N)).toBeCloseTo(1.6, 2);
    expect(Z_NT(5e7)).toBe(1);
    expect(Z_NT(1e10)).toBeCloseTo(0.85, 2);
  });

  it('of the root read back give the cycles, and one cycle above the level part', () => {
    const line = { N_S: rootLife.level, N_0: rootLife.knee, q: rootLife.slope, q_e: rootLife.beyond };
    fc.assert(
      fc.property(range(4.01, 9.9), (exponent) => {
        const N = root.rootLife.of({ ...line, Y: Y_NT(10 ** exponent) });
        expect(Math.log10(N)).toBeCloseTo(exponent, 9);
      }),
      many,
    );
    expect(root.rootLife.of({ ...line, Y: 2.6 })).toBe(1);
  });
});

describe('the factors relative to the test gear', () => {
  it('are one where the gear is the test gear: notch 2.5, Rz 10 µm, module 5', () => {
    for (const rho_p of [0.0833e-3, 0.0064e-3])
      expect(root.relativeNotchFactor.of({ rho_p, chi_P: 200, q_s: 2.5, q_sT: 2.5 })).toBe(1);
    for (const { surface, size } of Object.values(gearSteels)) {
      const Y_R = root.relativeSurfaceFactor.of({ ...surface, R_z: 1e-5, R_0: 1e-6 });
      // The standard rounds its constants; it names Rz 10 µm as the test gear's.
      expect(Y_R).toBeCloseTo(1, 1);
      expect(root.rootSizeFactor.of({ ...size, m_n: 5e-3, m_0: 1e-3 })).toBeCloseTo(1, 9);
      expect(root.rootSizeFactor.of({ ...size, m_n: 1e-3, m_0: 1e-3 })).toBe(1);
      expect(root.rootSizeFactor.of({ ...size, m_n: 12e-3, m_0: 1e-3 })).toBeLessThan(1);
    }
  });

  it('reward a soft steel for a sharp notch more than a hard one, and both for a smooth root', () => {
    const sharp = (rho_p: number) => root.relativeNotchFactor.of({ rho_p, chi_P: 200, q_s: 6, q_sT: 2.5 });
    expect(sharp(0.0833e-3)).toBeGreaterThan(sharp(0.0064e-3));
    expect(sharp(0.0064e-3)).toBeGreaterThan(1);
  });

  // Reference conditions of ISO 6336-5 (from memory): oil of 100 mm²/s at 50 °C, which is 167.5 at 40 °C by the two forms
  // of the factor, 10 m/s, Rz 3 µm at a radius of relative curvature of 10 mm.
  it('of the flank are one in the test gear’s oil, at its speed and roughness, for any steel', () => {
    for (const sigma_Hlim of [3e8, 1e9, 1.5e9]) {
      const C_ZL = flank.lubricantConstant.of({ sigma_Hlim, sigma_0: 4.375e9 });
      expect(flank.lubricantFactor.of({ C_ZL, nu_0: 134e-6, nu_40: 167.5e-6 })).toBeCloseTo(1, 9);
      expect(flank.speedFactor.of({ C_ZL, v_32: 32, v: 10 })).toBeCloseTo(1, 9);
      const rough = { R_3: 3e-6, rho_10: 0.01, sigma_Hlim, sigma_1: 1e6 };
      expect(flank.roughnessFactor.of({ ...rough, R_z: 3e-6, rho_red: 0.01 })).toBe(1);
      expect(flank.roughnessFactor.of({ ...rough, R_z: 6e-6, rho_red: 0.002 })).toBeLessThan(1);
    }
  });

  it('take the constant of the lubricant between its ends, 0.83 and 0.91, without a step', () => {
    const constant = (sigma_Hlim: number) => flank.lubricantConstant.of({ sigma_Hlim, sigma_0: 4.375e9 });
    expect(constant(5e8)).toBe(0.83);
    expect(constant(8.5e8)).toBeCloseTo(0.83, 4);
    expect(constant(1.2e9)).toBeCloseTo(0.91, 4);
    expect(constant(1.5e9)).toBe(0.91);
  });

  it('credit work hardening with 1.2 at 130 HB and nothing at 470', () => {
    expect(flank.workHardeningFactor.of({ H_B: 130 })).toBeCloseTo(1.2, 12);
    expect(flank.workHardeningFactor.of({ H_B: 470 })).toBeCloseTo(1, 12);
  });
});

describe('endurance by hardness', () => {
  const of = (steel: GearSteel, which: 'root' | 'flank', H: number) =>
    root.enduranceByHardness.of({ ...steel[which], H });

  it('holds every steel of the table to a hardness within its line', () => {
    for (const steel of Object.values(gearSteels)) {
      const { hardness, range: ends } = steel;
      expect(hardness.low).toBeLessThanOrEqual(hardness.value);
      expect(hardness.value).toBeLessThanOrEqual(hardness.high);
      expect(ends[0]).toBeLessThanOrEqual(hardness.low);
      expect(hardness.high).toBeLessThanOrEqual(ends[1]);
    }
  });

  // Independent source: the bending strength of grade 1 through-hardened steel of the American method, which counts the
  // notch of the tooth in J and holds for 10⁷ cycles, as sigma_Flim holds for the nominal stress of the test gear.
  it('of through-hardened steel agrees with the American line within a tenth', () => {
    const steel = gearSteels.steel_42crmo4_qt;
    if (steel === undefined) throw new Error('The table lacks 42CrMo4.');
    for (const H of [220, 260, 300]) {
      const american = agma.agmaBendingStrength.of({ H_B: H });
      expect(Math.abs(of(steel, 'root', H) / american - 1)).toBeLessThan(0.1);
    }
  });
});

describe('the single pair factor', () => {
  // Independent derivation: at any point of the path of contact the pressure goes with the root of 1/ρ_1 + 1/ρ_2. The
  // inner point of single contact of the pinion lies one base pitch before the end of contact.
  it('is the pressure at the inner point of single contact over that at the pitch point', () => {
    fc.assert(
      fc.property(range(18, 50), range(18, 90), range(0, 0.5), (z_1, z_2, x_1) => {
        const pair = workPair({ m_n: 1e-3, alpha_n: 20 * degree, beta: 0, z_1, z_2, x_1, x_2: 0 });
        const { one, two, alpha_wt, a, p_bt, eps_alpha } = pair;
        const length = a * Math.sin(alpha_wt);
        const curve = (rho: number) => Math.sqrt(1 / rho + 1 / (length - rho));
        const pitch = (one.d_b / 2) * Math.tan(alpha_wt);
        const end = Math.sqrt(one.d_a ** 2 - one.d_b ** 2) / 2;
        const M = flank.singlePairRatio.of({
          alpha_wt,
          d_a1: one.d_a,
          d_b1: one.d_b,
          z_1,
          d_a2: two.d_a,
          d_b2: two.d_b,
          z_2,
          eps_alpha,
        });
        expect(relative(M, curve(end - p_bt) / curve(pitch))).toBeLessThan(1e-9);
      }),
      many,
    );
  });

  it('is one where a whole overlap leaves no moment of single contact, and never less', () => {
    expect(flank.singlePairFactor.of({ M: 1.2, eps_beta: 1.3 })).toBeCloseTo(1, 12);
    expect(flank.singlePairFactor.of({ M: 1.2, eps_beta: 0 })).toBe(1.2);
    expect(flank.singlePairFactor.of({ M: 0.9, eps_beta: 0 })).toBe(1);
  });

  it('of relative curvature is that of the two flanks at the pitch point', () => {
    const [d_b1, d_b2, alpha_wt] = [0.02, 0.06, 22 * degree];
    const rho = (d_b: number) => (d_b / 2) * Math.tan(alpha_wt);
    const together = 1 / (1 / rho(d_b1) + 1 / rho(d_b2));
    expect(relative(flank.relativeCurvature.of({ d_b1, d_b2, alpha_wt }), together)).toBeLessThan(1e-12);
  });
});

describe('the flank pressure of a metal gear', () => {
  it('is that of the formula with all factors in one', () => {
    const g = { Z_H: 2.4, Z_E: 189.8e3, Z_eps: 0.9, Z_beta: 1, F_t: 800, b: 0.012, d_1: 0.02, u: 3 };
    const [K_A, K_v, K_Hbeta, K_Halpha] = [1.25, 1.1, 1.4, 1.2];
    const whole = flankPressureMetal.of({ ...g, K_A, K_v, K_Hbeta, K_Halpha });
    const pitch = flankPressure.of({ ...g, K_H: K_A });
    expect(
      relative(flank.metalFlankPressure.of({ sigma_H0: pitch, Z_BD: 1, K_v, K_Hbeta, K_Halpha }), whole),
    ).toBeLessThan(1e-12);
  });
});

describe('the root stress of a metal gear', () => {
  it('is that of the formula with all factors in one', () => {
    const g = { F_t: 800, b: 0.012, m_n: 1e-3, Y_Fa: 2.7, Y_Sa: 1.6, Y_eps: 0.7, Y_beta: 1 };
    const [K_A, K_v, K_Fbeta, K_Falpha] = [1.25, 1.1, 1.4, 1.2];
    const whole = rootStressMetal.of({ ...g, K_A, K_v, K_Fbeta, K_Falpha });
    const sigma_F0 = rootStress.of({ ...g, K_F: K_A });
    expect(relative(metalRootStress.of({ sigma_F0, K_v, K_Fbeta, K_Falpha }), whole)).toBeLessThan(1e-12);
  });
});

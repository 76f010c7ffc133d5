/** The single helical case-hardened pair of ISO/TR 6336-30, example 1, worked with the library. */
import * as mesh from '@/lib/calc/gears/backlash/mesh-stiffness';
import * as force from '@/lib/calc/gears/forces';
import { baseHelixAngle } from '@/lib/calc/gears/geometry/angles';
import { transverseContactRatio } from '@/lib/calc/gears/geometry/contact-ratio';
import { tipDiameter } from '@/lib/calc/gears/geometry/diameters';
import * as pairs from '@/lib/calc/gears/geometry/pair';
import { virtualToothNumber } from '@/lib/calc/gears/geometry/tooth-count';
import * as flank from '@/lib/calc/gears/strength/flank-pressure';
import { rootFaceLoadFactor } from '@/lib/calc/gears/strength/load-factors';
import * as steel from '@/lib/calc/gears/strength/steel-flank';
import { steelConstants } from '@/lib/catalog/gear-steels';
import type { Inputs, Works } from '../case';
import { workPair } from './pair';

const { flankLife } = steelConstants;

const shape = (i: Inputs) => ({
  m_n: i.of('mn'),
  alpha_n: i.of('alpha_n'),
  beta: i.of('beta'),
  z_1: i.of('z1'),
  z_2: i.of('z2'),
  x_1: i.of('x1'),
  x_2: i.of('x2'),
});

/** The pair at the centre distance that the example gives, its teeth not shortened. */
function pairOf(i: Inputs) {
  const g = shape(i);
  const { a_d, alpha_t, one, two, p_bt } = workPair(g);
  const a = i.of('a');
  const alpha_wt = pairs.workingAngleFromCentreDistance.of({ a_d, alpha_t, a });
  const tip = (d: number, x: number) => tipDiameter.of({ d, m_n: g.m_n, h_aP: 1, x, k: 0 });
  const eps_alpha = transverseContactRatio.of({
    d_a1: tip(one.d, g.x_1),
    d_b1: one.d_b,
    d_a2: tip(two.d, g.x_2),
    d_b2: two.d_b,
    a,
    alpha_wt,
    p_bt,
  });
  return {
    g,
    beta_b: baseHelixAngle.of(g),
    alpha_t,
    alpha_wt,
    one,
    two,
    eps_alpha,
    u: pairs.gearRatio.of(g),
  };
}

export const isoGeometry: Works = {
  'geo-32-iso-tr-6336-30-1': (i) => {
    const { g, alpha_t, alpha_wt, beta_b } = pairOf(i);
    return {
      x1: pairs.shiftSumForAngle.of({ ...g, alpha_wt, alpha_t }) - g.x_2,
      zn1: virtualToothNumber.of({ ...g, z: g.z_1, beta_b }),
      zn2: virtualToothNumber.of({ ...g, z: g.z_2, beta_b }),
    };
  },
};

export const isoStiffness: Works = {
  'bkl-10-iso-tr-6336-30-1': (i) => {
    const { g, beta_b, eps_alpha } = pairOf(i);
    const q_pr = mesh.toothCompliance.of({
      ...g,
      q_0: 1e-9,
      z_n1: virtualToothNumber.of({ ...g, z: g.z_1, beta_b }),
      z_n2: virtualToothNumber.of({ ...g, z: g.z_2, beta_b }),
    });
    const C_B = mesh.rackStiffnessFactor.of({ ...g, h_fP: i.of('hfP') });
    const c_pr = mesh.singleStiffness.of({ ...g, C_R: 1, C_B, q_pr });
    return { c_th: 1 / q_pr, c_single: c_pr, c_gamma: mesh.meshStiffness.of({ c_pr, eps_alpha }) };
  },
};

export const isoFlank: Works = {
  'str-40-iso-tr-6336-30-1': (i) => {
    const { g, alpha_t, alpha_wt, beta_b, one, two, eps_alpha, u } = pairOf(i);
    const [T, omega, b] = [i.of('T1'), i.of('n1'), i.of('b')];
    const F_t = force.tangentialForce.of({ T, d: one.d });
    const v = force.pitchLineVelocity.of({ omega, d: one.d });
    const [E, nu, sigma_Hlim] = [i.of('E'), i.of('nu'), i.of('sigma_Hlim')];
    const factors = {
      Z_E: flank.elasticityFactor.of({ E_1: E, nu_1: nu, E_2: E, nu_2: nu }),
      Z_H: flank.zoneFactor.of({ beta_b, alpha_wt, alpha_t }),
      Z_eps: flank.flankContactRatioFactor.of({ eps_alpha, eps_beta: 1 }),
      Z_beta: flank.flankHelixFactorMetal.of(g),
    };
    const sigma_H0 = flank.flankPressureMetal.of({
      ...factors,
      F_t,
      b,
      d_1: one.d,
      u,
      K_A: 1,
      K_v: 1,
      K_Hbeta: 1,
      K_Halpha: 1,
    });
    const sigma_H = steel.metalFlankPressure.of({
      sigma_H0,
      Z_BD: 1,
      K_v: i.of('Kv'),
      K_Hbeta: i.of('KHb'),
      K_Halpha: 1,
    });
    const C_ZL = steel.lubricantConstant.of({ sigma_Hlim, sigma_0: 4.375e9 });
    const Z_L = steel.lubricantFactor.of({ C_ZL, nu_0: 1.34e-4, nu_40: i.of('nu40') });
    const Z_v = steel.speedFactor.of({ C_ZL, v_32: 32, v });
    const rho_red = steel.relativeCurvature.of({ d_b1: one.d_b, d_b2: two.d_b, alpha_wt });
    const Z_R = steel.roughnessFactor.of({
      R_3: 3e-6,
      R_z: i.of('Rz'),
      rho_10: 0.01,
      rho_red,
      sigma_Hlim,
      sigma_1: 1e6,
    });
    const cycles = (speed: number) => force.loadCycles.of({ omega: speed, t: i.of('Lh'), n_mesh: 1 });
    const [N_1, N_2] = [cycles(omega), cycles(force.wheelSpeed.of({ omega_1: omega, u }))];
    const life = (N_L: number) =>
      steel.flankLifeFactor.of({
        N_L,
        N_S: flankLife.level,
        N_0: flankLife.knee,
        q: flankLife.slope,
        q_e: flankLife.beyond,
      });
    const strength = (Z_NT: number) =>
      steel.steelFlankStrength.of({ sigma_Hlim, Z_NT, Z_L, Z_v, Z_R, Z_W: 1, Z_X: 1, f_T: 1 });
    const [ZNT1, ZNT2] = [life(N_1), life(N_2)];
    const safety = (Z_NT: number) => flank.flankSafety.of({ sigma_HP: strength(Z_NT), sigma_H });
    return {
      Ft: F_t,
      v,
      ...factors,
      sigma_H0,
      KFb: rootFaceLoadFactor.of({ K_Hbeta: i.of('KHb'), h: i.of('h'), b }),
      sigma_H,
      ZL: Z_L,
      Zv: Z_v,
      ZR: Z_R,
      NL1: N_1,
      NL2: N_2,
      ZNT1,
      ZNT2,
      sigma_HP1: strength(ZNT1),
      sigma_HP2: strength(ZNT2),
      SH1: safety(ZNT1),
      SH2: safety(ZNT2),
    };
  },
};

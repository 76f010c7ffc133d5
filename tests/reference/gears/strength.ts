/** The strength cases of metal teeth, worked with the library. */
import * as force from '@/lib/calc/gears/forces';
import { baseHelixAngle, transversePressureAngle } from '@/lib/calc/gears/geometry/angles';
import { virtualContactRatio } from '@/lib/calc/gears/geometry/contact-ratio';
import { referenceDiameter } from '@/lib/calc/gears/geometry/diameters';
import * as agma from '@/lib/calc/gears/strength/agma';
import * as flank from '@/lib/calc/gears/strength/flank-pressure';
import * as lewis from '@/lib/calc/gears/strength/lewis';
import * as root from '@/lib/calc/gears/strength/root-stress';
import { toothForm } from '../../calc/gears/form-factor-chain';
import { loadLine, parabolaPoint, type Rack } from '../../calc/gears/rack-generated-tooth';
import type { Works } from '../case';
import { toSI } from '../units';

const degree = Math.PI / 180;
const inch = 0.0254;
const footPerMinute = 0.00508;

const tipForm = (z: number, x: number) =>
  toothForm({
    z_n: z,
    x,
    alpha_n: 20 * degree,
    h_fP: 1.25,
    rho_fP: 0.38,
    d_a: z + 2 + 2 * x,
    d: z,
    m_n: 1,
  });

/** Steel on steel in the American books. */
const steelCoefficient = toSI(2300, 'sqrt(psi)');

/** J of one gear of a pair: load where it last stands alone on the tooth, teeth thinned for backlash. */
function bendingFactor(rack: Rack, mate: number): number {
  const base = (z: number) => (z / 2) * Math.cos(rack.alpha);
  const pathEnd = ((rack.z + mate) / 2) * Math.sin(rack.alpha);
  const begins = pathEnd - Math.sqrt((mate / 2 + 1) ** 2 - base(mate) ** 2);
  const highest = Math.hypot(base(rack.z), begins + Math.PI * Math.cos(rack.alpha));
  const { height, angle } = loadLine(rack, highest);
  const point = parabolaPoint(rack, height);
  const h = height - point.height;
  const Y =
    1 /
    ((Math.cos(angle) / Math.cos(rack.alpha)) * ((6 * h) / point.chord ** 2 - Math.tan(angle) / point.chord));
  const depth = rack.dedendum - rack.tipRounding - rack.x;
  const r = rack.tipRounding + depth ** 2 / (rack.z / 2 + depth);
  const K_f = agma.agmaStressConcentration.of({ s: point.chord, r, h, alpha_n: rack.alpha });
  return agma.agmaBendingFactor.of({ Y, K_f, m_N: 1 });
}

export const strength: Works = {
  'str-01-lewis-table-shigley': (i) => {
    const alpha = i.of('phi');
    return {
      Y: i.list('N').map((z) => {
        const rack = { z, x: 0, alpha, dedendum: 1.157, tipRounding: 0.3 };
        const { height } = loadLine(rack, z / 2 + 1);
        const point = parabolaPoint(rack, height);
        return lewis.lewisFormFactor.of({ t: point.chord, l: height - point.height, m: 1 });
      }),
    };
  },
  'str-03-lewis-closed': (i) => ({
    Y20: i.list('z').map((z) => lewis.lewisFormFactorClosed.of({ z })),
  }),
  'str-04-lewis-shigley-14-1': (i) => {
    const m = 1 / i.of('P');
    const omega = i.of('n');
    const d = referenceDiameter.of({ z: i.of('N'), m_n: m, beta: 0 });
    const v = force.pitchLineVelocity.of({ omega, d });
    const K_v = lewis.barthVelocityFactor.of({ v_ref: 1200 * footPerMinute, v });
    const sigma_all = i.of('S') / i.of('nd');
    const Wt = lewis.lewisForce.of({ b: i.of('F'), m, Y: i.of('Y'), sigma_all, K_v });
    return { d, V: v, Kv: K_v, Wt, hp: force.shaftPower.of({ T: (Wt * d) / 2, omega }) };
  },
  'str-05-lewis-shigley-14-2': (i) => {
    const m = 1 / i.of('P');
    const x_L = lewis.lewisOffset.of({ Y: i.of('Y'), m });
    const l = 2.25 * m;
    const t = lewis.lewisRootThickness.of({ l, x_L });
    const d_e = lewis.equivalentRootDiameter.of({ b: i.of('F'), t });
    const k_b = lewis.sizeFactor.of({ d_e, d_0: 0.3 * inch });
    return { x: x_L, l, t, de: d_e, kb: k_b, rf_over_t: (0.3 * m) / t };
  },
  'str-06-contact-shigley-14-3': (i) => {
    const phi = i.of('phi');
    const Z_E = flank.elasticityFactor.of({
      E_1: i.of('EP'),
      nu_1: i.of('nuP'),
      E_2: i.of('EG'),
      nu_2: i.of('nuG'),
    });
    const r_1 = (i.of('dP') / 2) * Math.sin(phi);
    const r_2 = (i.of('dG') / 2) * Math.sin(phi);
    const F_n = i.of('Kv') * force.normalForce.of({ F_t: i.of('Wt'), alpha_n: phi, beta: 0 });
    return {
      Cp: Z_E,
      r1: r_1,
      r2: r_2,
      sigma_C: flank.cylinderPressure.of({ Z_E, F_n, b: i.of('F'), r_1, r_2 }),
    };
  },
  'str-07-agma-spur-shigley-14-4': (i) => {
    const [m, b, omega] = [1 / i.of('P'), i.of('F'), i.of('n')];
    const [z_1, z_2] = [i.of('NP'), i.of('NG')];
    const d = referenceDiameter.of({ z: z_1, m_n: m, beta: 0 });
    const v = force.pitchLineVelocity.of({ omega, d });
    const F_t = force.tangentialForce.of({ T: i.of('H') / omega, d });
    const B_v = agma.agmaDynamicExponent.of({ Q_v: i.of('Qv') });
    const K_v = agma.agmaDynamicFactor.of({ B_v, v, v_0: footPerMinute });
    const C_pf = agma.agmaProportionFactor.of({ b, d_P: d, l_0: inch });
    const C_ma = agma.agmaAlignmentFactor.of({ b, l_0: inch });
    const K_m = agma.agmaLoadDistribution.of({ C_mc: 1, C_pf, C_pm: 1, C_ma, C_e: 1 });
    const I = agma.agmaPittingFactor.of({ alpha_t: 20 * degree, m_N: 1, u: z_2 / z_1 });
    const work = (Y: number, J: number, H_B: number, N_L: number) => {
      const K_s = agma.agmaSizeFactor.of({ b, m, Y, l_0: inch });
      const g = { F_t, K_o: 1, K_v, K_s, b, m, K_m, K_B: 1, J };
      const sigma_B = agma.agmaBendingStress.of(g);
      const Y_N = agma.agmaStressCycleFactor.of({ N_L });
      const S_t = agma.agmaBendingStrength.of({ H_B });
      return {
        K_s,
        Y_N,
        sigma_B,
        S_F: agma.agmaBendingSafety.of({ S_t, Y_N, K_T: 1, K_R: 0.85, sigma_B }),
        sigma_C: agma.agmaContactStress.of({ ...g, C_p: steelCoefficient, C_f: 1, d_P: d, I }),
      };
    };
    // The example: pinion 240 HB, gear 200 HB, 10⁸ turns of the pinion, reliability 0.90.
    const pinion = work(i.of('Y1'), i.of('JP'), 240, 1e8);
    const gear = work(i.of('Y2'), i.of('JG'), 200, (1e8 * z_1) / z_2);
    return {
      V: v,
      Wt: F_t,
      Kv: K_v,
      Ks_P: pinion.K_s,
      Ks_G: gear.K_s,
      Km: K_m,
      I,
      YN_P: pinion.Y_N,
      YN_G: gear.Y_N,
      sigma_P: pinion.sigma_B,
      sigma_G: gear.sigma_B,
      SF_P: pinion.S_F,
      SF_G: gear.S_F,
      sigma_cP: pinion.sigma_C,
      sigma_cG: gear.sigma_C,
    };
  },
  'str-09-mott-9': (i) => {
    const g = {
      F_t: i.of('Wt'),
      K_o: i.of('KoK'),
      K_v: i.of('Kv'),
      K_s: 1,
      b: i.of('F'),
      m: 1 / i.of('Pd'),
      K_m: i.of('Km'),
      K_B: 1,
    };
    return {
      st_P: agma.agmaBendingStress.of({ ...g, J: i.of('JP') }),
      st_G: agma.agmaBendingStress.of({ ...g, J: i.of('JG') }),
      sc: agma.agmaContactStress.of({
        ...g,
        C_p: steelCoefficient,
        C_f: 1,
        d_P: i.of('D'),
        I: i.of('I'),
      }),
    };
  },
  'str-11-YFa-table': (i) => ({
    YFa: i.list('z').map((z) => tipForm(z, 0).Y_Fa),
  }),
  'str-12-YSa-table': (i) => ({
    YSa: i.list('z').map((z) => tipForm(z, 0).Y_Sa),
  }),
  'str-13-contact-pu-10-1': (i) => {
    const T1 = i.of('P') / i.of('n');
    return {
      T1,
      d1t: flank.pinionDiameterForFlank.of({
        K_H: i.of('KT'),
        // The book goes on with its rounded torque, and its 2.32 stands for the cube root of 2 Z_H².
        T_1: 99.48,
        Z_H: Math.sqrt(2.32 ** 3 / 2),
        phi_d: i.of('phi_d'),
        u: i.of('u'),
        Z_E: i.of('zE'),
        Z_eps: 1,
        Z_beta: 1,
        sigma_HP: i.of('sH'),
      }),
    };
  },
  'str-15-contact-pu-10-2': (i) => {
    return {
      ZH: zone(i.of('beta')),
      d1t: flank.pinionDiameterForFlank.of({
        K_H: i.of('KT'),
        T_1: i.of('T1'),
        phi_d: i.of('phi_d'),
        u: i.of('u'),
        // The book goes on with its reading of the chart.
        Z_H: 2.433,
        Z_E: i.of('zE'),
        Z_eps: flank.flankContactRatioFactor.of({ eps_alpha: i.of('ea'), eps_beta: 1 }),
        Z_beta: 1,
        sigma_HP: i.of('sH'),
      }),
    };
  },
  'str-16-ZE-table': (i) => {
    const nu = i.of('nu');
    const E2 = i.list('E2');
    return {
      ZE: i
        .list('E1')
        .map((E_1, k) => flank.elasticityFactor.of({ E_1, nu_1: nu, E_2: E2[k] ?? 0, nu_2: nu })),
    };
  },
  'str-18-ZH': (i) => ({ ZH: i.list('beta').map(zone) }),
  'str-19-agma-J-17-52': (i) => {
    const rack = {
      // Teeth thinned by 0.024 for backlash: the tool is fed in by so much deeper.
      x: -0.024 / (2 * Math.tan(20 * degree)),
      alpha: 20 * degree,
      dedendum: i.of('hf'),
      tipRounding: i.of('rho'),
    };
    const [z_1, z_2] = [i.of('NP'), i.of('NG')];
    return { JP: bendingFactor({ ...rack, z: z_1 }, z_2), JG: bendingFactor({ ...rack, z: z_2 }, z_1) };
  },
  'str-21-I-factor': (i) => {
    const alpha_t = i.of('phi');
    return { I: i.list('mG').map((u) => agma.agmaPittingFactor.of({ alpha_t, m_N: 1, u })) };
  },
  'str-22-Yeps-Zeps': (i) => {
    const [eps_alpha, eps_beta, beta] = [i.of('ea'), i.of('eb'), i.of('beta')];
    return {
      // The case gives the virtual contact ratio itself.
      Y_eps: root.rootContactRatioFactor.of({ eps_alphan: virtualContactRatio.of({ eps_alpha, beta_b: 0 }) }),
      Z_eps: flank.flankContactRatioFactor.of({ eps_alpha, eps_beta }),
      Z_eps_spur: flank.flankContactRatioFactor.of({ eps_alpha, eps_beta: 0 }),
      Y_beta: root.rootHelixFactor.of({ eps_beta, beta }),
      Z_beta_DIN: flank.flankHelixFactor.of({ beta }),
    };
  },
  'str-23-YF-jgma-chart': (i) => {
    const x = i.list('x');
    return { YF: i.list('z').map((z, k) => tipForm(z, x[k] ?? 0).Y_Fa) };
  },
};

/** Zone factor of an unshifted pair of 20° teeth. */
function zone(beta: number): number {
  const alpha_t = transversePressureAngle.of({ alpha_n: 20 * degree, beta });
  return flank.zoneFactor.of({
    beta_b: baseHelixAngle.of({ beta, alpha_n: 20 * degree }),
    alpha_wt: alpha_t,
    alpha_t,
  });
}

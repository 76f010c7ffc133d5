/** The cases of forces, losses and plastic teeth, worked with the library. */
import * as loss from '@/lib/calc/gears/efficiency';
import * as force from '@/lib/calc/gears/forces';
import { addendumContactRatio } from '@/lib/calc/gears/geometry/contact-ratio';
import { referenceDiameter } from '@/lib/calc/gears/geometry/diameters';
import * as plastic from '@/lib/calc/gears/strength/plastics';
import * as root from '@/lib/calc/gears/strength/root-stress';
import { toothForm } from '../../calc/gears/form-factor-chain';
import type { Works } from '../case';
import { lossIntegral } from './loss-integral';
import { type PairInput, workPair } from './pair';

const degree = Math.PI / 180;

/** Loss degree of a pair by the closed form and by the integral; tip diameters may be those of the drawing. */
function losses(g: PairInput, tips?: readonly [d_a1: number, d_a2: number], held?: number) {
  const pair = workPair(g);
  const alpha_wt = held === undefined ? pair.alpha_wt : Math.acos((pair.a_d * Math.cos(pair.alpha_t)) / held);
  const { p_bt } = pair;
  const [d_a1, d_a2] = tips ?? [pair.one.d_a, pair.two.d_a];
  const eps_1 = addendumContactRatio.of({ d_a: d_a1, d_b: pair.one.d_b, alpha_wt, p_bt });
  const eps_2 = addendumContactRatio.of({ d_a: d_a2, d_b: pair.two.d_b, alpha_wt, p_bt });
  return {
    HV: loss.lossDegree.of({ u: g.z_2 / g.z_1, z_2: g.z_2, beta_b: 0, eps_1, eps_2 }),
    HV_numeric: lossIntegral({ d_b1: pair.one.d_b, d_b2: pair.two.d_b, p_bt, eps_1, eps_2 }),
  };
}

export const forcesAndPlastics: Works = {
  'frc-01-herringbone': (i) => {
    const F_t = 2 * i.of('Ft_half');
    const beta = i.of('beta');
    return {
      Fa_left: force.axialForcePerHalf.of({ F_t, beta }),
      Fa_right: force.axialForcePerHalf.of({ F_t, beta: -beta }),
      Fa_net: force.netAxialForce.of({ F_t, q: 0.5, beta_1: beta, beta_2: -beta }),
    };
  },
  'frc-02-spur-shigley-13-7': (i) => {
    const d = referenceDiameter.of({ z: i.of('N2'), m_n: i.of('m'), beta: 0 });
    const g = { F_t: force.tangentialForce.of({ T: i.of('H') / i.of('n'), d }) };
    const angles = { alpha_n: i.of('phi'), beta: 0 };
    return {
      d,
      Wt: g.F_t,
      Wr: force.radialForce.of({ ...g, ...angles }),
      W: force.normalForce.of({ ...g, ...angles }),
    };
  },
  'frc-04-helical-juvinall-16': (i) => {
    const F_t = force.tangentialForce.of({ T: i.of('P') / i.of('n'), d: i.of('d') });
    const beta = i.of('psi');
    return {
      Ft: F_t,
      Fr: force.radialForce.of({ F_t, alpha_n: i.of('phi_n'), beta }),
      Fa: force.axialForce.of({ F_t, beta }),
    };
  },
  'frc-05-khk-torque': (i) => {
    const omega = i.of('n');
    const d = referenceDiameter.of({ z: i.of('N'), m_n: 1 / i.of('Pd'), beta: 0 });
    return {
      D: d,
      vt: force.pitchLineVelocity.of({ omega, d }),
      Wt: force.tangentialForce.of({ T: i.of('P') / omega, d }),
    };
  },
  'pla-01b-dupont-nomograph': (i) => {
    const g = { F_t: i.of('F'), m_n: i.of('M'), b: i.of('f') };
    const S = plastic.mouldedToothStress.of(g);
    return { S, Y_equiv: g.F_t / (g.m_n * g.b * S) };
  },
  'pla-02-sFlim-POM': (i) => {
    const N = i.list('N');
    return {
      sFlim: i.list('T').map((theta, k) => plastic.rootFatiguePom.of({ theta, N_L: N[k] ?? 0 })),
    };
  },
  'pla-04-sHlim-PA66': (i) => {
    const N = i.list('N');
    return {
      sHlim: i.list('T').map((theta, k) => plastic.flankFatiguePa66.of({ theta, N_L: N[k] ?? 0 })),
    };
  },
  'pla-05-tooth-temperature': (i) => {
    const [z_1, z_2, m_n] = [i.of('z1'), i.of('z2'), i.of('m')];
    const { HV, HV_numeric } = losses({ m_n, alpha_n: 20 * degree, beta: 0, z_1, z_2, x_1: 0, x_2: 0 });
    const v = force.pitchLineVelocity.of({
      omega: i.of('n1'),
      d: referenceDiameter.of({ z: z_1, m_n, beta: 0 }),
    });
    const heat = {
      theta_0: i.of('T0'),
      P: i.of('P'),
      mu: i.of('mu'),
      H_V: HV,
      b: i.of('b'),
      // The plastic gear is the wheel.
      z: z_2,
      v,
      m_n,
      R_lambda: i.of('RA'),
      A: i.of('A'),
      ED: i.of('ED'),
    };
    return {
      HV,
      HV_numeric,
      v,
      theta_root: plastic.toothRootTemperature.of({ ...heat, k_F: i.of('kF') }),
      theta_flank: plastic.flankTemperature.of({ ...heat, k_H: i.of('kFl') }),
    };
  },
  'pla-06-vdi-test-gear-a': (i) => {
    const g = { m_n: i.of('m'), z_1: i.of('z1'), z_2: i.of('z2') };
    return { a: workPair({ ...g, alpha_n: 20 * degree, beta: 0, x_1: 0, x_2: 0 }).a };
  },
  'pla-07-deformation': (i) => {
    const g = { F_t: i.of('Ft'), b: i.of('b'), beta: i.of('beta') };
    return { lam: plastic.toothDeflection.of({ ...g, E_1: i.of('E1'), E_2: i.of('E2') }) };
  },
  'pla-09-root-stress': (i) => {
    const [z, x, m_n] = [i.of('z'), i.of('x'), i.of('m')];
    const { Y_Fa, Y_Sa } = toothForm({
      z_n: z,
      x,
      alpha_n: 20 * degree,
      h_fP: 1.25,
      rho_fP: 0.38,
      d_a: (z + 2 + 2 * x) * m_n,
      d: z * m_n,
      m_n,
    });
    const Y_eps = root.rootContactRatioFactor.of({ eps_alphan: i.of('ea') });
    const Y_beta = root.rootHelixFactor.of({ eps_beta: 0, beta: 0 });
    const g = { K_F: i.of('KA'), F_t: i.of('Ft'), b: i.of('b'), m_n };
    return {
      YFa: Y_Fa,
      YSa: Y_Sa,
      Y_eps,
      sigma_F: root.rootStress.of({ ...g, Y_Fa, Y_Sa, Y_eps, Y_beta }),
    };
  },
  'pla-14-temperature-factor': (i) => {
    // 100 °F, from which the rule counts.
    const theta_ref = 273.15 + ((100 - 32) * 5) / 9;
    return {
      CT: i
        .list('alpha')
        .map((alpha_T) => plastic.temperatureFactor.of({ alpha_T, theta: i.of('T'), theta_ref })),
    };
  },
  'eff-01-HV-fzg-c': (i) => {
    return losses(
      {
        m_n: i.of('m'),
        alpha_n: 20 * degree,
        beta: 0,
        z_1: i.of('z1'),
        z_2: i.of('z2'),
        x_1: i.of('x1'),
        x_2: i.of('x2'),
      },
      [i.of('da1'), i.of('da2')],
      i.of('a'),
    );
  },
  'eff-02-HV-20-40': (i) => {
    const { HV, HV_numeric } = losses({
      m_n: 1,
      alpha_n: 20 * degree,
      beta: i.of('beta'),
      z_1: i.of('z1'),
      z_2: i.of('z2'),
      x_1: 0,
      x_2: 0,
    });
    return { HV, HV_numeric, eta_mu_0_05: loss.meshEfficiency.of({ mu: 0.05, H_V: HV }) };
  },
  'eff-04-multi-stage': (i) => ({
    eta_tot: i.list('eta').reduce((eta_before, eta) => loss.trainEfficiency.of({ eta_before, eta }), 1),
  }),
  'eff-05-mu-schlenk': (i) => {
    return {
      mu: loss.meshFrictionSteelOil.of({
        w_bt: i.of('Fbt_b'),
        v_SC: i.of('v_sc'),
        rho_C: i.of('rho'),
        eta_oil: i.of('eta'),
        Ra: i.of('Ra'),
        X_L: i.of('XL'),
      }),
    };
  },
};

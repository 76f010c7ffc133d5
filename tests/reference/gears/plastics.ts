/** The cases of forces, losses and plastic teeth, worked with the library. */
import * as loss from '@/lib/calc/gears/efficiency';
import * as force from '@/lib/calc/gears/forces';
import { addendumContactRatio } from '@/lib/calc/gears/geometry/contact-ratio';
import { referenceDiameter } from '@/lib/calc/gears/geometry/diameters';
import * as plastic from '@/lib/calc/gears/strength/plastics';
import * as root from '@/lib/calc/gears/strength/root-stress';
import { toothForm } from '../../calc/gears/form-factor-chain';
import { input, inputs } from './cases';
import type { Work } from './geometry';
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

export const forcesAndPlastics: Readonly<Record<string, Work>> = {
  'frc-01-herringbone': () => {
    const id = 'frc-01-herringbone';
    const F_t = 2 * input(id, 'Ft_half');
    const beta = input(id, 'beta');
    return {
      Fa_left: force.axialForcePerHalf.of({ F_t, beta }),
      Fa_right: force.axialForcePerHalf.of({ F_t, beta: -beta }),
      Fa_net: force.netAxialForce.of({ F_t, q: 0.5, beta_1: beta, beta_2: -beta }),
    };
  },
  'frc-02-spur-shigley-13-7': () => {
    const id = 'frc-02-spur-shigley-13-7';
    const d = referenceDiameter.of({ z: input(id, 'N2'), m_n: input(id, 'm'), beta: 0 });
    const g = { F_t: force.tangentialForce.of({ T: input(id, 'H') / input(id, 'n'), d }) };
    const angles = { alpha_n: input(id, 'phi'), beta: 0 };
    return {
      d,
      Wt: g.F_t,
      Wr: force.radialForce.of({ ...g, ...angles }),
      W: force.normalForce.of({ ...g, ...angles }),
    };
  },
  'frc-04-helical-juvinall-16': () => {
    const id = 'frc-04-helical-juvinall-16';
    const F_t = force.tangentialForce.of({ T: input(id, 'P') / input(id, 'n'), d: input(id, 'd') });
    const beta = input(id, 'psi');
    return {
      Ft: F_t,
      Fr: force.radialForce.of({ F_t, alpha_n: input(id, 'phi_n'), beta }),
      Fa: force.axialForce.of({ F_t, beta }),
    };
  },
  'frc-05-khk-torque': () => {
    const id = 'frc-05-khk-torque';
    const omega = input(id, 'n');
    const d = referenceDiameter.of({ z: input(id, 'N'), m_n: 1 / input(id, 'Pd'), beta: 0 });
    return {
      D: d,
      vt: force.pitchLineVelocity.of({ omega, d }),
      Wt: force.tangentialForce.of({ T: input(id, 'P') / omega, d }),
    };
  },
  'pla-01b-dupont-nomograph': () => {
    const id = 'pla-01b-dupont-nomograph';
    const g = { F_t: input(id, 'F'), m_n: input(id, 'M'), b: input(id, 'f') };
    const S = plastic.mouldedToothStress.of(g);
    return { S, Y_equiv: g.F_t / (g.m_n * g.b * S) };
  },
  'pla-02-sFlim-POM': () => {
    const id = 'pla-02-sFlim-POM';
    const N = inputs(id, 'N');
    return {
      sFlim: inputs(id, 'T').map((theta, i) => plastic.rootFatiguePom.of({ theta, N_L: N[i] ?? 0 })),
    };
  },
  'pla-04-sHlim-PA66': () => {
    const id = 'pla-04-sHlim-PA66';
    const N = inputs(id, 'N');
    return {
      sHlim: inputs(id, 'T').map((theta, i) => plastic.flankFatiguePa66.of({ theta, N_L: N[i] ?? 0 })),
    };
  },
  'pla-05-tooth-temperature': () => {
    const id = 'pla-05-tooth-temperature';
    const [z_1, z_2, m_n] = [input(id, 'z1'), input(id, 'z2'), input(id, 'm')];
    const { HV, HV_numeric } = losses({ m_n, alpha_n: 20 * degree, beta: 0, z_1, z_2, x_1: 0, x_2: 0 });
    const v = force.pitchLineVelocity.of({
      omega: input(id, 'n1'),
      d: referenceDiameter.of({ z: z_1, m_n, beta: 0 }),
    });
    const heat = {
      theta_0: input(id, 'T0'),
      P: input(id, 'P'),
      mu: input(id, 'mu'),
      H_V: HV,
      b: input(id, 'b'),
      // The plastic gear is the wheel.
      z: z_2,
      v,
      m_n,
      R_lambda: input(id, 'RA'),
      A: input(id, 'A'),
      ED: input(id, 'ED'),
    };
    return {
      HV,
      HV_numeric,
      v,
      theta_root: plastic.toothRootTemperature.of({ ...heat, k_F: input(id, 'kF') }),
      theta_flank: plastic.flankTemperature.of({ ...heat, k_H: input(id, 'kFl') }),
    };
  },
  'pla-06-vdi-test-gear-a': () => {
    const id = 'pla-06-vdi-test-gear-a';
    const g = { m_n: input(id, 'm'), z_1: input(id, 'z1'), z_2: input(id, 'z2') };
    return { a: workPair({ ...g, alpha_n: 20 * degree, beta: 0, x_1: 0, x_2: 0 }).a };
  },
  'pla-07-deformation': () => {
    const id = 'pla-07-deformation';
    const g = { F_t: input(id, 'Ft'), b: input(id, 'b'), beta: input(id, 'beta') };
    return { lam: plastic.toothDeflection.of({ ...g, E_1: input(id, 'E1'), E_2: input(id, 'E2') }) };
  },
  'pla-09-root-stress': () => {
    const id = 'pla-09-root-stress';
    const [z, x, m_n] = [input(id, 'z'), input(id, 'x'), input(id, 'm')];
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
    const Y_eps = root.rootContactRatioFactor.of({ eps_alphan: input(id, 'ea') });
    const Y_beta = root.rootHelixFactor.of({ eps_beta: 0, beta: 0 });
    const g = { K_F: input(id, 'KA'), F_t: input(id, 'Ft'), b: input(id, 'b'), m_n };
    return {
      YFa: Y_Fa,
      YSa: Y_Sa,
      Y_eps,
      sigma_F: root.rootStress.of({ ...g, Y_Fa, Y_Sa, Y_eps, Y_beta }),
    };
  },
  'pla-14-temperature-factor': () => {
    const id = 'pla-14-temperature-factor';
    // 100 °F, from which the rule counts.
    const theta_ref = 273.15 + ((100 - 32) * 5) / 9;
    return {
      CT: inputs(id, 'alpha').map((alpha_T) =>
        plastic.temperatureFactor.of({ alpha_T, theta: input(id, 'T'), theta_ref }),
      ),
    };
  },
  'eff-01-HV-fzg-c': () => {
    const id = 'eff-01-HV-fzg-c';
    return losses(
      {
        m_n: input(id, 'm'),
        alpha_n: 20 * degree,
        beta: 0,
        z_1: input(id, 'z1'),
        z_2: input(id, 'z2'),
        x_1: input(id, 'x1'),
        x_2: input(id, 'x2'),
      },
      [input(id, 'da1'), input(id, 'da2')],
      input(id, 'a'),
    );
  },
  'eff-02-HV-20-40': () => {
    const id = 'eff-02-HV-20-40';
    const { HV, HV_numeric } = losses({
      m_n: 1,
      alpha_n: 20 * degree,
      beta: input(id, 'beta'),
      z_1: input(id, 'z1'),
      z_2: input(id, 'z2'),
      x_1: 0,
      x_2: 0,
    });
    return { HV, HV_numeric, eta_mu_0_05: loss.meshEfficiency.of({ mu: 0.05, H_V: HV }) };
  },
  'eff-04-multi-stage': () => ({
    eta_tot: inputs('eff-04-multi-stage', 'eta').reduce(
      (eta_before, eta) => loss.trainEfficiency.of({ eta_before, eta }),
      1,
    ),
  }),
  'eff-05-mu-schlenk': () => {
    const id = 'eff-05-mu-schlenk';
    return {
      mu: loss.meshFrictionSteelOil.of({
        w_bt: input(id, 'Fbt_b'),
        v_SC: input(id, 'v_sc'),
        rho_C: input(id, 'rho'),
        eta_oil: input(id, 'eta'),
        Ra: input(id, 'Ra'),
        X_L: input(id, 'XL'),
      }),
    };
  },
};

/** The geometry cases, worked with the library: case → results in SI under the names of the recorded figures. */
import * as angles from '@/lib/calc/gears/geometry/angles';
import * as contact from '@/lib/calc/gears/geometry/contact-ratio';
import * as diameters from '@/lib/calc/gears/geometry/diameters';
import * as measure from '@/lib/calc/gears/geometry/measurement';
import * as pairs from '@/lib/calc/gears/geometry/pair';
import * as thickness from '@/lib/calc/gears/geometry/thickness';
import * as limits from '@/lib/calc/gears/geometry/tooth-count';
import { involute } from '@/lib/calc/numeric/involute';
import { input, inputs } from './cases';
import { workPair } from './pair';

export type Results = Readonly<Record<string, number | readonly number[]>>;
export type Work = () => Results;

/** What the tables of a pair print, from `workPair`. */
function printed(pair: ReturnType<typeof workPair>): Record<string, number> {
  const { one, two } = pair;
  return {
    inv_aw: involute(pair.alpha_wt),
    inv_awt: involute(pair.alpha_wt),
    alpha_w: pair.alpha_wt,
    alpha_wt: pair.alpha_wt,
    alpha_t: pair.alpha_t,
    y: pair.y,
    a: pair.a,
    d1: one.d,
    d2: two.d,
    db1: one.d_b,
    db2: two.d_b,
    da1: one.d_a,
    da2: two.d_a,
    df1: one.d_f,
    df2: two.d_f,
    dw1: one.d_w,
    dw2: two.d_w,
    ha1: (one.d_a - one.d) / 2,
    ha2: (two.d_a - two.d) / 2,
    h: diameters.toothDepth.of(one),
    eps_alpha: pair.eps_alpha,
  };
}

const spur = (id: string, shifted: boolean) =>
  workPair({
    m_n: input(id, 'm'),
    alpha_n: input(id, 'alpha'),
    beta: 0,
    z_1: input(id, 'z1'),
    z_2: input(id, 'z2'),
    x_1: shifted ? input(id, 'x1') : 0,
    x_2: shifted ? input(id, 'x2') : 0,
  });

export const geometry: Readonly<Record<string, Work>> = {
  'geo-01-involute-table': () => ({
    inv: inputs('geo-01-involute-table', 'alpha').map((alpha) => angles.involuteOfAngle.of({ alpha })),
  }),
  'geo-02-spur-standard': () => printed(spur('geo-02-spur-standard', false)),
  'geo-03-spur-shifted': () => printed(spur('geo-03-spur-shifted', true)),
  'geo-05-pinion-rack': () => {
    const id = 'geo-05-pinion-rack';
    const gear = { z: input(id, 'z'), x: input(id, 'x'), m_n: input(id, 'm'), beta: 0 };
    const d = diameters.referenceDiameter.of(gear);
    const d_a = diameters.tipDiameter.of({ ...gear, d, h_aP: 1, k: 0 });
    const d_f = diameters.rootDiameter.of({ ...gear, d, h_fP: 1.25 });
    return {
      a: pairs.rackMountingDistance.of({ ...gear, H: input(id, 'H') }),
      d,
      db: diameters.baseDiameter.of({ d, alpha_t: input(id, 'alpha') }),
      da: d_a,
      df: d_f,
      h: diameters.toothDepth.of({ d_a, d_f }),
    };
  },
  'geo-08-helical-normal': () => {
    const id = 'geo-08-helical-normal';
    return printed(
      workPair({
        m_n: input(id, 'mn'),
        alpha_n: input(id, 'alpha_n'),
        beta: input(id, 'beta'),
        z_1: input(id, 'z1'),
        z_2: input(id, 'z2'),
        x_1: input(id, 'x1'),
        x_2: input(id, 'x2'),
      }),
    );
  },
  'geo-11-fzg-a': () => {
    const id = 'geo-11-fzg-a';
    const [z_1, z_2, a, alpha] = [input(id, 'z1'), input(id, 'z2'), input(id, 'a'), input(id, 'alpha')];
    const a_d = pairs.referenceCentreDistance.of({ m_n: input(id, 'm'), z_1, z_2, beta: 0 });
    const alpha_wt = pairs.workingAngleFromCentreDistance.of({ a_d, alpha_t: alpha, a });
    return {
      alpha_wt,
      sum_x: pairs.shiftSumForAngle.of({ z_1, z_2, alpha_wt, alpha_t: alpha, alpha_n: alpha }),
      dw1: diameters.pitchDiameter.of({ a, z: z_1, z_mate: z_2 }),
      dw2: diameters.pitchDiameter.of({ a, z: z_2, z_mate: z_1 }),
    };
  },
  'geo-12-shigley-13-1': () => {
    const id = 'geo-12-shigley-13-1';
    const [z_1, z_2, alpha_t] = [input(id, 'N1'), input(id, 'N2'), input(id, 'phi')];
    const m_n = 1 / input(id, 'P');
    const a_d = pairs.referenceCentreDistance.of({ m_n, z_1, z_2, beta: 0 });
    const a = a_d + input(id, 'dC');
    const baseRadius = (z: number) =>
      diameters.baseDiameter.of({ d: diameters.referenceDiameter.of({ z, m_n, beta: 0 }), alpha_t }) / 2;
    return {
      p: angles.transversePitch.of({ m_n, beta: 0 }),
      C: a_d,
      rb1: baseRadius(z_1),
      rb2: baseRadius(z_2),
      d1_new: diameters.pitchDiameter.of({ a, z: z_1, z_mate: z_2 }),
      d2_new: diameters.pitchDiameter.of({ a, z: z_2, z_mate: z_1 }),
      phi_new: pairs.workingAngleFromCentreDistance.of({ a_d, alpha_t, a }),
    };
  },
  'geo-13-shigley-13-2': () => {
    const id = 'geo-13-shigley-13-2';
    const [beta, alpha_n] = [input(id, 'psi'), input(id, 'phi_n')];
    const m_n = (1 / input(id, 'Pt')) * Math.cos(beta);
    return {
      d: diameters.referenceDiameter.of({ z: input(id, 'N'), m_n, beta }),
      pt: angles.transversePitch.of({ m_n, beta }),
      pn: angles.normalPitch.of({ m_n }),
      px: angles.axialPitch.of({ m_n, beta }),
      Pn: 1 / m_n,
      phi_t: angles.transversePressureAngle.of({ alpha_n, beta }),
    };
  },
  'geo-14-interference-spur': () => {
    const id = 'geo-14-interference-spur';
    const g = { h_aP: input(id, 'k'), alpha_t: input(id, 'phi'), beta: 0 };
    return {
      NP_1to1: limits.interferencePinion.of({ ...g, u: 1 }),
      NP_4to1: limits.interferencePinion.of({ ...g, u: 4 }),
      NP_rack: limits.interferenceRack.of(g),
      // The book names whole teeth: the largest number not beyond the limit.
      NG_max: [13, 14, 15, 16, 17].map((z) => Math.floor(limits.interferenceGear.of({ ...g, z }))),
    };
  },
  'geo-16-undercut-limit': () => {
    const id = 'geo-16-undercut-limit';
    const g = { h_aP: 1, beta: 0 };
    return {
      z_min: inputs(id, 'alpha').map((alpha_t) => limits.undercutTeeth.of({ ...g, alpha_t })),
      x_min_20: inputs(id, 'z').map((z) => limits.undercutShift.of({ ...g, z, alpha_t: Math.PI / 9 })),
    };
  },
  'geo-19-tip-thickness': () => {
    const id = 'geo-19-tip-thickness';
    const alpha = input(id, 'alpha');
    const gear = { z: input(id, 'z'), x: input(id, 'x'), m_n: input(id, 'm'), beta: 0, alpha_n: alpha };
    const d = diameters.referenceDiameter.of(gear);
    const d_b = diameters.baseDiameter.of({ d, alpha_t: alpha });
    const d_a = diameters.tipDiameter.of({ ...gear, d, h_aP: 1, k: 0 });
    const alpha_at = thickness.tipPressureAngle.of({ d_b, d_a });
    const s_n = thickness.toothThickness.of(gear);
    const s_t = thickness.transverseToothThickness.of({ s_n, beta: 0 });
    const s_a = thickness.tipThickness.of({ d_a, s_t, d, alpha_t: alpha, alpha_at });
    return {
      d,
      db: d_b,
      da: d_a,
      alpha_a: alpha_at,
      inv_aa: angles.involuteOfAngle.of({ alpha: alpha_at }),
      theta: thickness.halfThicknessAngle.of({ s_t: s_a, d: d_a }),
      s_a,
    };
  },
  'geo-20-chordal-thickness': () => {
    const id = 'geo-20-chordal-thickness';
    const gear = { z: input(id, 'z'), x: input(id, 'x'), m_n: input(id, 'm'), beta: 0 };
    const d = diameters.referenceDiameter.of(gear);
    const s = thickness.toothThickness.of({ ...gear, alpha_n: input(id, 'alpha') });
    const psi = thickness.halfThicknessAngle.of({ s_t: s, d });
    const h_a = (diameters.tipDiameter.of({ ...gear, d, h_aP: 1, k: 0 }) - d) / 2;
    return {
      s,
      psi,
      s_chord: thickness.chordalThickness.of({ d, psi }),
      h_chord: thickness.chordalHeight.of({ d, psi, h_a }),
    };
  },
  'geo-20b-rack-thickness': () => {
    const m_n = input('geo-20b-rack-thickness', 'm');
    return {
      s: thickness.toothThickness.of({ m_n, x: 0, alpha_n: Math.PI / 9 }),
      ha: diameters.tipDiameter.of({ d: 0, m_n, h_aP: 1, x: 0, k: 0 }) / 2,
    };
  },
  'geo-21-span-spur': () => {
    const id = 'geo-21-span-spur';
    const alpha = input(id, 'alpha');
    const g = { z: input(id, 'z'), x: input(id, 'x'), m_n: input(id, 'm'), alpha_n: alpha, alpha_t: alpha };
    const k_calc = measure.spanTeeth.of(g);
    const k = Math.round(k_calc);
    return { k_calc, k, W: measure.spanMeasurement.of({ ...g, k_W: k }) };
  },
  'geo-23-over-pins-spur': () => {
    const id = 'geo-23-over-pins-spur';
    const alpha = input(id, 'alpha');
    const g = { z: input(id, 'z'), x: input(id, 'x'), m_n: input(id, 'm'), alpha_n: alpha, alpha_t: alpha };
    const eta_b = measure.spaceHalfAngle.of(g);
    const phi_i = measure.idealPinAngle.of({ ...g, eta_b });
    const d_p = input(id, 'dp');
    const phi_p = measure.pinAngle.of({ ...g, eta_b, d_p });
    const d_b = diameters.baseDiameter.of({
      d: diameters.referenceDiameter.of({ ...g, beta: 0 }),
      alpha_t: alpha,
    });
    return {
      half: eta_b,
      phi_ideal: phi_i,
      dp_ideal: measure.idealPinDiameter.of({ ...g, phi_i, eta_b }),
      inv_phi: angles.involuteOfAngle.of({ alpha: phi_p }),
      phi: phi_p,
      M: measure.overPinsEven.of({ d_b, phi_p, d_p }),
    };
  },
  'ctr-01-shifted-pair': () => printed(spur('ctr-01-shifted-pair', true)),
  'ctr-02-table-standard': () => {
    const id = 'ctr-02-table-standard';
    const teeth = inputs(id, 'pairs');
    const alpha_n = input(id, 'alpha');
    const eps_alpha: number[] = [];
    for (let i = 0; i + 1 < teeth.length; i += 2)
      eps_alpha.push(
        workPair({ m_n: 1, alpha_n, beta: 0, z_1: teeth[i] ?? 0, z_2: teeth[i + 1] ?? 0, x_1: 0, x_2: 0 })
          .eps_alpha,
      );
    return { eps_alpha };
  },
  'ctr-04-jgma-example': () => {
    const id = 'ctr-04-jgma-example';
    const pair = workPair({
      m_n: input(id, 'm'),
      alpha_n: Math.PI / 9,
      beta: 0,
      z_1: input(id, 'z1'),
      z_2: input(id, 'z2'),
      x_1: input(id, 'x1'),
      x_2: input(id, 'x2'),
    });
    // JGMA takes one over the contact ratio for its factor.
    return { a: pair.a, Y_eps: 1 / pair.eps_alpha };
  },
  'ctr-05-overlap': () => {
    const id = 'ctr-05-overlap';
    const beta = input(id, 'beta');
    const m_n = 1;
    const b = input(id, 'phi_d') * diameters.referenceDiameter.of({ z: input(id, 'z1'), m_n, beta });
    return { eps_beta: contact.overlapRatio.of({ b, beta, m_n }) };
  },
  'ctr-07-total-helical': () => {
    const id = 'ctr-07-total-helical';
    const beta = input(id, 'psi');
    const m_n = (1 / input(id, 'Pd')) * Math.cos(beta);
    const { eps_alpha } = workPair({
      m_n,
      alpha_n: input(id, 'phi_n'),
      beta,
      z_1: input(id, 'N1'),
      z_2: input(id, 'N2'),
      x_1: 0,
      x_2: 0,
    });
    const eps_beta = contact.overlapRatio.of({ b: input(id, 'F'), beta, m_n });
    return {
      Pn: 1 / m_n,
      eps_beta,
      eps_alpha,
      eps_gamma: contact.totalContactRatio.of({ eps_alpha, eps_beta }),
    };
  },
};

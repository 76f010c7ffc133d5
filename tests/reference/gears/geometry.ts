/** The geometry cases, worked with the library: case → results in SI under the names of the recorded figures. */
import * as angles from '@/lib/calc/gears/geometry/angles';
import * as contact from '@/lib/calc/gears/geometry/contact-ratio';
import * as diameters from '@/lib/calc/gears/geometry/diameters';
import * as measure from '@/lib/calc/gears/geometry/measurement';
import * as pairs from '@/lib/calc/gears/geometry/pair';
import * as thickness from '@/lib/calc/gears/geometry/thickness';
import * as limits from '@/lib/calc/gears/geometry/tooth-count';
import { involute } from '@/lib/calc/numeric/involute';
import type { Inputs, Works } from '../case';
import { workPair } from './pair';

/** What the table of the case prints of a pair. */
function printed(i: Inputs, pair: ReturnType<typeof workPair>): Record<string, number> {
  const { one, two } = pair;
  const figures = {
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
  return Object.fromEntries(Object.entries(figures).filter(([name]) => i.prints.includes(name)));
}

const spur = (i: Inputs, shifted: boolean) =>
  workPair({
    m_n: i.of('m'),
    alpha_n: i.of('alpha'),
    beta: 0,
    z_1: i.of('z1'),
    z_2: i.of('z2'),
    x_1: shifted ? i.of('x1') : 0,
    x_2: shifted ? i.of('x2') : 0,
  });

export const geometry: Works = {
  'geo-01-involute-table': (i) => ({
    inv: i.list('alpha').map((alpha) => angles.involuteOfAngle.of({ alpha })),
  }),
  'geo-02-spur-standard': (i) => printed(i, spur(i, false)),
  'geo-03-spur-shifted': (i) => printed(i, spur(i, true)),
  'geo-05-pinion-rack': (i) => {
    const gear = { z: i.of('z'), x: i.of('x'), m_n: i.of('m'), beta: 0 };
    const d = diameters.referenceDiameter.of(gear);
    const d_a = diameters.tipDiameter.of({ ...gear, d, h_aP: 1, k: 0 });
    const d_f = diameters.rootDiameter.of({ ...gear, d, h_fP: 1.25 });
    return {
      a: pairs.rackMountingDistance.of({ ...gear, H: i.of('H') }),
      d,
      db: diameters.baseDiameter.of({ d, alpha_t: i.of('alpha') }),
      da: d_a,
      df: d_f,
      h: diameters.toothDepth.of({ d_a, d_f }),
    };
  },
  'geo-08-helical-normal': (i) => {
    return printed(
      i,
      workPair({
        m_n: i.of('mn'),
        alpha_n: i.of('alpha_n'),
        beta: i.of('beta'),
        z_1: i.of('z1'),
        z_2: i.of('z2'),
        x_1: i.of('x1'),
        x_2: i.of('x2'),
      }),
    );
  },
  'geo-11-fzg-a': (i) => {
    const [z_1, z_2, a, alpha] = [i.of('z1'), i.of('z2'), i.of('a'), i.of('alpha')];
    const a_d = pairs.referenceCentreDistance.of({ m_n: i.of('m'), z_1, z_2, beta: 0 });
    const alpha_wt = pairs.workingAngleFromCentreDistance.of({ a_d, alpha_t: alpha, a });
    return {
      alpha_wt,
      sum_x: pairs.shiftSumForAngle.of({ z_1, z_2, alpha_wt, alpha_t: alpha, alpha_n: alpha }),
      dw1: diameters.pitchDiameter.of({ a, z: z_1, z_mate: z_2 }),
      dw2: diameters.pitchDiameter.of({ a, z: z_2, z_mate: z_1 }),
    };
  },
  'geo-12-shigley-13-1': (i) => {
    const [z_1, z_2, alpha_t] = [i.of('N1'), i.of('N2'), i.of('phi')];
    const m_n = 1 / i.of('P');
    const a_d = pairs.referenceCentreDistance.of({ m_n, z_1, z_2, beta: 0 });
    const a = a_d + i.of('dC');
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
  'geo-13-shigley-13-2': (i) => {
    const [beta, alpha_n] = [i.of('psi'), i.of('phi_n')];
    const m_n = (1 / i.of('Pt')) * Math.cos(beta);
    return {
      d: diameters.referenceDiameter.of({ z: i.of('N'), m_n, beta }),
      pt: angles.transversePitch.of({ m_n, beta }),
      pn: angles.normalPitch.of({ m_n }),
      px: angles.axialPitch.of({ m_n, beta }),
      Pn: 1 / m_n,
      phi_t: angles.transversePressureAngle.of({ alpha_n, beta }),
    };
  },
  'geo-14-interference-spur': (i) => {
    const g = { h_aP: i.of('k'), alpha_t: i.of('phi'), beta: 0 };
    return {
      NP_1to1: limits.interferencePinion.of({ ...g, u: 1 }),
      NP_4to1: limits.interferencePinion.of({ ...g, u: 4 }),
      NP_rack: limits.interferenceRack.of(g),
      // The book names whole teeth: the largest number not beyond the limit.
      NG_max: [13, 14, 15, 16, 17].map((z) => Math.floor(limits.interferenceGear.of({ ...g, z }))),
    };
  },
  'geo-16-undercut-limit': (i) => {
    const g = { h_aP: 1, beta: 0 };
    return {
      z_min: i.list('alpha').map((alpha_t) => limits.undercutTeeth.of({ ...g, alpha_t })),
      x_min_20: i.list('z').map((z) => limits.undercutShift.of({ ...g, z, alpha_t: Math.PI / 9 })),
    };
  },
  'geo-19-tip-thickness': (i) => {
    const alpha = i.of('alpha');
    const gear = { z: i.of('z'), x: i.of('x'), m_n: i.of('m'), beta: 0, alpha_n: alpha };
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
  'geo-20-chordal-thickness': (i) => {
    const gear = { z: i.of('z'), x: i.of('x'), m_n: i.of('m'), beta: 0 };
    const d = diameters.referenceDiameter.of(gear);
    const s = thickness.toothThickness.of({ ...gear, alpha_n: i.of('alpha') });
    const psi = thickness.halfThicknessAngle.of({ s_t: s, d });
    const h_a = (diameters.tipDiameter.of({ ...gear, d, h_aP: 1, k: 0 }) - d) / 2;
    return {
      s,
      psi,
      s_chord: thickness.chordalThickness.of({ d, psi }),
      h_chord: thickness.chordalHeight.of({ d, psi, h_a }),
    };
  },
  'geo-20b-rack-thickness': (i) => {
    const m_n = i.of('m');
    return {
      s: thickness.toothThickness.of({ m_n, x: 0, alpha_n: Math.PI / 9 }),
      ha: diameters.tipDiameter.of({ d: 0, m_n, h_aP: 1, x: 0, k: 0 }) / 2,
    };
  },
  'geo-21-span-spur': (i) => {
    const alpha = i.of('alpha');
    const g = { z: i.of('z'), x: i.of('x'), m_n: i.of('m'), alpha_n: alpha, alpha_t: alpha };
    const k_calc = measure.spanTeeth.of(g);
    const k = Math.round(k_calc);
    return { k_calc, k, W: measure.spanMeasurement.of({ ...g, k_W: k }) };
  },
  'geo-23-over-pins-spur': (i) => {
    const alpha = i.of('alpha');
    const g = { z: i.of('z'), x: i.of('x'), m_n: i.of('m'), alpha_n: alpha, alpha_t: alpha };
    const eta_b = measure.spaceHalfAngle.of(g);
    const phi_i = measure.idealPinAngle.of({ ...g, eta_b });
    const d_p = i.of('dp');
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
  'ctr-01-shifted-pair': (i) => printed(i, spur(i, true)),
  'ctr-02-table-standard': (i) => {
    const teeth = i.list('pairs');
    const alpha_n = i.of('alpha');
    const eps_alpha: number[] = [];
    for (let k = 0; k + 1 < teeth.length; k += 2)
      eps_alpha.push(
        workPair({ m_n: 1, alpha_n, beta: 0, z_1: teeth[k] ?? 0, z_2: teeth[k + 1] ?? 0, x_1: 0, x_2: 0 })
          .eps_alpha,
      );
    return { eps_alpha };
  },
  'ctr-04-jgma-example': (i) => {
    const pair = workPair({
      m_n: i.of('m'),
      alpha_n: Math.PI / 9,
      beta: 0,
      z_1: i.of('z1'),
      z_2: i.of('z2'),
      x_1: i.of('x1'),
      x_2: i.of('x2'),
    });
    // JGMA takes one over the contact ratio for its factor.
    return { a: pair.a, Y_eps: 1 / pair.eps_alpha };
  },
  'ctr-05-overlap': (i) => {
    const beta = i.of('beta');
    const m_n = 1;
    const b = i.of('phi_d') * diameters.referenceDiameter.of({ z: i.of('z1'), m_n, beta });
    return { eps_beta: contact.overlapRatio.of({ b, beta, m_n }) };
  },
  'ctr-07-total-helical': (i) => {
    const beta = i.of('psi');
    const m_n = (1 / i.of('Pd')) * Math.cos(beta);
    const { eps_alpha } = workPair({
      m_n,
      alpha_n: i.of('phi_n'),
      beta,
      z_1: i.of('N1'),
      z_2: i.of('N2'),
      x_1: 0,
      x_2: 0,
    });
    const eps_beta = contact.overlapRatio.of({ b: i.of('F'), beta, m_n });
    return {
      Pn: 1 / m_n,
      eps_beta,
      eps_alpha,
      eps_gamma: contact.totalContactRatio.of({ eps_alpha, eps_beta }),
    };
  },
};

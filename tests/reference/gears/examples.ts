/** Worked examples of textbooks on gears, worms and belts, worked with the library. */

import * as belt from '@/lib/calc/gears/belt/geometry';
import * as force from '@/lib/calc/gears/forces';
import * as angles from '@/lib/calc/gears/geometry/angles';
import * as diameters from '@/lib/calc/gears/geometry/diameters';
import { referenceCentreDistance } from '@/lib/calc/gears/geometry/pair';
import * as lewis from '@/lib/calc/gears/strength/lewis';
import * as friction from '@/lib/calc/gears/worm/efficiency';
import * as shape from '@/lib/calc/gears/worm/geometry';
import { steadyRise } from '@/lib/calc/thermal/one-node';
import type { Inputs, Works } from '../case';

const footPerMinute = 0.00508;

/** Diameter of a spur gear from its teeth and diametral pitch. */
const pitchDiameter = (i: Inputs, teeth: string) =>
  diameters.referenceDiameter.of({ z: i.of(teeth), m_n: 1 / i.of('Pd'), beta: 0 });

export const geometryExamples: Works = {
  'geo-30-wentzell-11-3': (i) => {
    const m_n = 1 / i.of('Pd');
    return {
      Dp: pitchDiameter(i, 'Np'),
      Dg: pitchDiameter(i, 'Ng'),
      Pc: angles.transversePitch.of({ m_n, beta: 0 }),
      CC: referenceCentreDistance.of({ m_n, z_1: i.of('Np'), z_2: i.of('Ng'), beta: 0 }),
    };
  },
  'geo-31-jindal-26-1': (i) => {
    const g = { m_n: i.of('mn'), beta: i.of('beta') };
    const alpha_t = angles.transversePressureAngle.of({ ...g, alpha_n: i.of('alpha_n') });
    const [d_1, d_2] = ['Zp', 'Zg'].map((teeth) => diameters.referenceDiameter.of({ ...g, z: i.of(teeth) }));
    const tip = (d = Number.NaN) => diameters.tipDiameter.of({ ...g, d, h_aP: 1, x: 0, k: 0 });
    const root = (d = Number.NaN) => diameters.rootDiameter.of({ ...g, d, h_fP: 1.25, x: 0 });
    return {
      mt: angles.transversePitch.of(g) / Math.PI,
      alpha_t,
      da1: tip(d_1),
      df1: root(d_1),
      da2: tip(d_2),
      df2: root(d_2),
      px: angles.axialPitch.of(g),
    };
  },
};

export const forceExamples: Works = {
  'frc-10-wentzell-12-1': (i) => {
    const d = pitchDiameter(i, 'Np');
    const F_t = force.tangentialForce.of({ T: i.of('hp') / i.of('n'), d });
    const g = { F_t, alpha_n: i.of('phi'), beta: 0 };
    return { Dp: d, Ft: F_t, Fn: force.radialForce.of(g), Fr: force.normalForce.of(g) };
  },
  'frc-11-wentzell-12-2': (i) => ({
    Vm: force.pitchLineVelocity.of({ omega: i.of('n'), d: i.of('Dp') }),
  }),
  'frc-12-wentzell-13-1': (i) => {
    const d = pitchDiameter(i, 'Nt');
    const omega = i.of('n');
    const F_t = force.tangentialForce.of({ T: i.of('hp') / omega, d });
    const beta = i.of('psi');
    return {
      Vm: force.pitchLineVelocity.of({ omega, d }),
      Ft: F_t,
      Fa: force.axialForce.of({ F_t, beta }),
      Fn: force.radialForce.of({ F_t, alpha_n: i.of('phi'), beta }),
    };
  },
  'frc-13-jindal-26-2': (i) => {
    const beta = i.of('beta');
    const d = diameters.referenceDiameter.of({ z: i.of('Zp'), m_n: i.of('mn'), beta });
    const F_t = force.tangentialForce.of({ T: i.of('P') / i.of('n'), d });
    return {
      Pt: F_t,
      Pa: force.axialForce.of({ F_t, beta }),
      Pr: force.radialForce.of({ F_t, alpha_n: i.of('alpha_n'), beta }),
    };
  },
};

/** Barth's factor of the book: 600 ft/min for commercial teeth. */
const velocityFactor = (v: number) => lewis.barthVelocityFactor.of({ v_ref: 600 * footPerMinute, v });

export const strengthExamples: Works = {
  'str-30-wentzell-12-3': (i) => {
    const g = { b: i.of('b'), m: 1 / i.of('Pd'), K_v: 1 };
    return {
      F_pinion: lewis.lewisForce.of({ ...g, Y: i.of('Y_p'), sigma_all: i.of('Sn_p') }),
      F_gear: lewis.lewisForce.of({ ...g, Y: i.of('Y_g'), sigma_all: i.of('Sn_g') }),
    };
  },
  'str-31-wentzell-12-4': (i) => ({ Fd: velocityFactor(i.of('Vm')) * i.of('Ft') }),
  'str-32-wentzell-12-5': (i) => {
    const [d, omega] = [pitchDiameter(i, 'Np'), i.of('n')];
    const v = force.pitchLineVelocity.of({ omega, d });
    const g = { b: i.of('b'), m: 1 / i.of('Pd'), Y: i.of('Y'), sigma_all: i.of('Sn') };
    const F_t = lewis.lewisForce.of({ ...g, K_v: velocityFactor(v) });
    return {
      Dp: d,
      Vm: v,
      Fs: lewis.lewisForce.of({ ...g, K_v: 1 }),
      Ft: F_t,
      P: force.shaftPower.of({ T: (F_t * d) / 2, omega }),
    };
  },
  'str-33-wentzell-12-6': (i) => {
    const [d, omega] = [pitchDiameter(i, 'Np'), i.of('n')];
    const v = force.pitchLineVelocity.of({ omega, d });
    const F_t = force.tangentialForce.of({ T: i.of('hp') / omega, d });
    return { Vm: v, Ft: F_t, Fd: velocityFactor(v) * F_t };
  },
  'str-34-wentzell-12-7': (i) => {
    const [d, omega] = [pitchDiameter(i, 'Np'), i.of('n')];
    const T = i.of('hp') / omega;
    return {
      T,
      Ft: force.tangentialForce.of({ T, d }),
      Vm: force.pitchLineVelocity.of({ omega, d }),
      Fs: lewis.lewisForce.of({
        b: i.of('b'),
        m: 1 / i.of('Pd'),
        Y: i.of('Y'),
        sigma_all: i.of('Sn'),
        K_v: 1,
      }),
    };
  },
};

/** Efficiency of a worm given by its starts and diameter in modules. */
function efficiency(i: Inputs): number {
  const m_x = i.of('m');
  const gamma_m = shape.leadAngle.of({ z_1: i.of('Z1'), m_x, d_m1: i.of('q') * m_x });
  const rho_z = friction.wormFrictionAngle.of({ mu: i.of('mu'), alpha_n: i.of('alpha') });
  return friction.wormEfficiency.of({ gamma_m, rho_z });
}

/** Centre distance of the same with its wheel. */
function wormPair(i: Inputs) {
  const m_x = i.of('m');
  const d_m2 = shape.wormWheelDiameter.of({ z_2: i.of('Z2'), m_x, x_2: 0 });
  return { d_m2, a: shape.wormCentreDistance.of({ d_m1: i.of('q') * m_x, d_m2 }) };
}

export const wormExamples: Works = {
  'wrm-10-wentzell-13-4': (i) => {
    const m_x = 1 / i.of('Pd');
    const d_m1 = i.of('D');
    const d_m2 = shape.wormWheelDiameter.of({ z_2: i.of('Ng'), m_x, x_2: 0 });
    return {
      Dp: d_m2,
      Pc: Math.PI * m_x,
      lead: shape.leadAngle.of({ z_1: i.of('starts'), m_x, d_m1 }),
      CC: shape.wormCentreDistance.of({ d_m1, d_m2 }),
    };
  },
  'wrm-11-wentzell-13-6': (i) => ({
    eta: friction.wormEfficiency.of({
      gamma_m: i.of('lead'),
      rho_z: friction.wormFrictionAngle.of({ mu: i.of('f'), alpha_n: 0 }),
    }),
    T: i.of('hp') / i.of('n'),
  }),
  'wrm-12-jindal-28-1': (i) => ({ CD: wormPair(i).a, D: wormPair(i).d_m2 }),
  'wrm-13-jindal-28-2': (i) => ({
    CD: wormPair(i).a,
    pa: angles.transversePitch.of({ m_n: i.of('m'), beta: 0 }),
  }),
  'wrm-14-jindal-28-4': (i) => {
    const out = i.of('P') * efficiency(i);
    return { Po: out, Pf: i.of('P') - out };
  },
  'wrm-15-jindal-28-5': (i) => {
    const eta = efficiency(i);
    return { eta, rise: steadyRise.of({ P: i.of('P') * (1 - eta), R_th: 1 / (i.of('K') * i.of('A')) }) };
  },
};

export const beltExamples: Works = {
  'blt-01-wentzell-14-2': (i) => {
    const [d_1, d_2] = [i.of('D1'), i.of('D2')];
    const a = belt.beltCentreDistance.of({ d_1, d_2, L_b: i.of('L') });
    return {
      C: a,
      wrap: belt.smallPulleyWrap.of({ gamma: belt.strandAngle.of({ d_2, d_1, a }) }),
      Vm: force.pitchLineVelocity.of({ omega: i.of('n'), d: d_1 }),
      ratio: belt.beltRatio.of({ z_2: d_2, z_1: d_1 }),
    };
  },
  'blt-02-jindal-20-3': (i) => {
    const [d_1, d_2, a] = [i.of('d'), i.of('D'), i.of('C')];
    return {
      v: force.pitchLineVelocity.of({ omega: i.of('N'), d: d_1 }),
      L: belt.beltLength.of({ a, gamma: belt.strandAngle.of({ d_2, d_1, a }), d_1, d_2 }),
    };
  },
};

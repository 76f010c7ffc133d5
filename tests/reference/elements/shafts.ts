/** The cases of shafts and hubs, worked with the library. */
import {
  cantileverDeflection,
  cantileverSlope,
  centreDeflection,
  centreSlope,
} from '@/lib/calc/shafts/beam/cases';
import * as criteria from '@/lib/calc/shafts/fatigue/criteria';
import * as endurance from '@/lib/calc/shafts/fatigue/endurance';
import * as notch from '@/lib/calc/shafts/fatigue/notch';
import { clampHubTorque, clampPressure, setScrewTorque } from '@/lib/calc/shafts/hubs/friction';
import { flatTorque, flatWidth, keyPressureTorque, keyShearTorque } from '@/lib/calc/shafts/hubs/positive';
import { areaMoment, twist } from '@/lib/calc/shafts/stiffness';
import * as stress from '@/lib/calc/shafts/stress';
import { enduranceCap, surfaceConstants } from '@/lib/catalog/shafts/fatigue';
import { parallelKey } from '@/lib/catalog/shafts/keys';
import { cupHolding, pointFactors, seatingTorques } from '@/lib/catalog/shafts/set-screws';
import type { Works } from '../case';

const { megapascal: MPa, kilopoundPerSquareInch: kpsi, millimetre, inch } = endurance.fitUnits;
const S_cap = enduranceCap.value;
const whole = { k_c: 1, k_d: 1 };

export const shafts: Works = {
  'SHF-01': (i) => {
    const [d, S_ut, S_y] = [i.of('d'), i.of('Sut'), i.of('Sy')];
    const K_f = notch.fatigueNotchFactor.of({ q: i.of('q'), K_t: i.of('Kt') });
    const K_fs = notch.fatigueNotchFactor.of({ q: i.of('qs'), K_t: i.of('Kts') });
    const { a: a_s, b: b_s } = surfaceConstants.machined.older;
    const k_a = endurance.surfaceFactor.of({ a_s, b_s, S_ut, S_1: MPa });
    const k_b = endurance.sizeFactor.of({ d, d_1: millimetre });
    const S_e0 = endurance.specimenEndurance.of({ S_ut, S_cap });
    const S_e = endurance.enduranceLimit.of({ k_a, k_b, k_e: i.of('ke'), ...whole, S_e0 });
    const sigma_a = criteria.notchedStress.of({ K_f, M_b: i.of('Ma'), K_fs, T: 0, d });
    const sigma_m = criteria.notchedStress.of({ K_f, M_b: 0, K_fs, T: i.of('Tm'), d });
    const sigma_v = criteria.notchedStress.of({ K_f, M_b: i.of('Ma'), K_fs, T: i.of('Tm'), d });
    const g = { sigma_a, sigma_m, S_e, S_ut, S_y };
    return {
      Kf: K_f,
      Kfs: K_fs,
      ka: k_a,
      kb: k_b,
      Se: S_e,
      sigma_a,
      sigma_m,
      n_Goodman: criteria.goodmanFactor.of(g),
      n_Gerber: criteria.gerberFactor.of(g),
      n_ASME: criteria.ellipticFactor.of(g),
      n_Soderberg: criteria.soderbergFactor.of(g),
      n_y: stress.yieldFactor.of({ S_y, sigma_v }),
    };
  },
  'SHF-03': (i) => {
    const [sigma_a, tau_t] = [i.of('sigma_a'), i.of('tau_m')];
    const sigma_m = stress.equivalentStress.of({ sigma: 0, tau_t });
    const sigma_v = stress.equivalentStress.of({ sigma: sigma_a, tau_t });
    const g = { sigma_a, sigma_m, S_e: i.of('Se'), S_ut: i.of('Sut'), S_y: i.of('Sy') };
    return {
      sigma_m_vm: sigma_m,
      n_y: stress.yieldFactor.of({ S_y: g.S_y, sigma_v }),
      n_Goodman: criteria.goodmanFactor.of(g),
      n_Gerber: criteria.gerberFactor.of(g),
      n_ASME: criteria.ellipticFactor.of(g),
    };
  },
  'SHF-05': (i) => {
    const S_ut = endurance.strengthOfHardness.of({ HB: i.of('HB'), S_1: MPa });
    const { a: a_s, b: b_s } = surfaceConstants.ground;
    const k_a = endurance.surfaceFactor.of({ a_s, b_s, S_ut, S_1: MPa });
    const k_b = endurance.sizeFactor.of({ d: i.of('d'), d_1: millimetre });
    const S_e0 = endurance.specimenEndurance.of({ S_ut, S_cap });
    const third = { S_ut: i.of('Sut3'), f_k: i.of('f3') };
    const S_e = endurance.specimenEndurance.of({ S_ut: third.S_ut, S_cap });
    const a_N = endurance.lifeIntercept.of({ ...third, S_e });
    const b_N = endurance.lifeExponent.of({ ...third, S_e });
    return {
      Sut: S_ut,
      ka: k_a,
      kb: k_b,
      Se: endurance.enduranceLimit.of({ k_a, k_b, k_e: 1, ...whole, S_e0 }),
      a3: a_N,
      b3: b_N,
      N3: endurance.cyclesToFailure.of({ sigma_rev: i.of('sigma_ar3'), a_N, b_N }),
    };
  },
  'SHF-06': (i) => {
    const D = i.of('D/d');
    const r = i.of('r/d');
    const g = { D, r, h: (D - 1) / 2 };
    return {
      Kt_bending: notch.shoulderBending(g) ?? Number.NaN,
      Kts_torsion: notch.shoulderTorsion.of(g),
      Kt_bending_norton: notch.shoulderPower.of({
        A_K: i.of('norton_A'),
        r,
        d: 1,
        b_K: i.of('norton_b'),
      }),
    };
  },
  'SHF-07': (i) => {
    const a_n = notch.notchLengthBending.of({ S_ut: i.of('Sut'), S_1: kpsi, l_1: inch });
    const q = notch.notchSensitivity.of({ a_n, r: i.of('r') });
    return {
      sqrt_a: Math.sqrt(a_n),
      sqrt_a_mm: Math.sqrt(a_n),
      Kf: notch.fatigueNotchFactor.of({ q, K_t: i.of('Kt') }),
    };
  },
  'SHF-08': (i) => {
    const sigma = stress.bendingStress.of({ M_b: i.of('M'), d: i.of('d') });
    const tau_t = stress.torsionStress.of({ T: i.of('T'), d: i.of('d') });
    return { sigma, tau: tau_t, sigma_vm: stress.equivalentStress.of({ sigma, tau_t }) };
  },
  'SHF-09': (i) => {
    const g = { T: i.of('T'), G: i.of('G'), d_i: 0 };
    const theta =
      twist.of({ ...g, l: i.of('L1'), d: i.of('d1') }) + twist.of({ ...g, l: i.of('L2'), d: i.of('d2') });
    return { theta, theta_deg: theta };
  },
  'SHF-10': (i) => {
    const I = areaMoment.of({ d: i.of('d'), d_i: 0 });
    const arm = { F: i.of('F'), l: i.of('L'), E: i.of('E'), I };
    const span = { F: i.of('F_ss'), l: i.of('L_ss'), E: i.of('E'), I };
    return {
      delta: cantileverDeflection.of(arm),
      slope: cantileverSlope.of(arm),
      delta_ss: centreDeflection.of(span),
      slope_ss: centreSlope.of(span),
    };
  },
  'SHF-12': (i) => ({
    T: keyShearTorque.of({ d: 2 * i.of('r'), b: i.of('a'), l: i.of('l'), tau_k: i.of('tau') }),
  }),
  'SHF-13': (i) => {
    const key = parallelKey(i.of('d') / millimetre);
    const h = (key?.h ?? Number.NaN) * millimetre;
    const t_1 = (key?.t1 ?? Number.NaN) * millimetre;
    return { T_5x5: keyPressureTorque.of({ d: i.of('d'), h, t_1, l: i.of('l'), p: i.of('p') }) };
  },
  'SHF-14': (i) => {
    const g = { n_e: 1, F_h: cupHolding(0.25 * inch) ?? Number.NaN, d: i.of('shaft_d') };
    const cup = setScrewTorque.of({ ...g, k_pt: pointFactors.cup });
    return {
      T_slip: cup,
      T_slip_SI: cup,
      T_cone_SI: setScrewTorque.of({ ...g, k_pt: pointFactors.cone }),
    };
  },
  'SHF-15': () => {
    const apart = (rows: typeof seatingTorques) =>
      Math.max(...rows.map((row) => Math.abs(row.other / row.one - 1)));
    const from = seatingTorques.findIndex((row) => row.size === 'M4');
    return {
      max_dev_M4_up: apart(seatingTorques.slice(from)),
      max_dev_below_M4: apart(seatingTorques.slice(0, from)),
    };
  },
  'SHF-16': (i) => {
    const g = { mu: i.of('mu'), F: i.of('F'), d: i.of('d') };
    return {
      T_point: clampHubTorque.of({ ...g, k_cl: clampPressure.line }),
      T_uniform: clampHubTorque.of({ ...g, k_cl: clampPressure.even }),
      T_cosine: clampHubTorque.of({ ...g, k_cl: clampPressure.cosine }),
    };
  },
  'SHF-17': (i) => {
    const b_f = flatWidth.of({ s: i.of('flat_depth'), d: i.of('d') });
    return { w: b_f, T: flatTorque.of({ p: i.of('p_max'), l: i.of('L'), b_f }) };
  },
};

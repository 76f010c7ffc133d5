/** The cases of the motor and its heat, worked with the library. */
import * as constants from '@/lib/calc/motor/constants';
import { drag } from '@/lib/calc/motor/drag';
import * as losses from '@/lib/calc/motor/losses';
import { phases } from '@/lib/calc/motor/phases';
import * as power from '@/lib/calc/motor/power';
import * as speed from '@/lib/calc/motor/speed';
import * as torque from '@/lib/calc/motor/torque';
import { continuousMoving } from '@/lib/calc/thermal/continuous';
import { riseTo } from '@/lib/calc/thermal/mount';
import * as thermal from '@/lib/calc/thermal/one-node';
import { copper } from '@/lib/catalog/copper';
import { magnets } from '@/lib/catalog/magnets';
import { insulationClasses } from '@/lib/catalog/motor-thermal';
import type { Inputs, Work, Works } from '../case';

const theta_0 = copper.zeroResistance.value;
const room = 298.15;

const sheet: Work = (i) => {
  const K_t = i.of('kM');
  const K_v = constants.speedConstant.of({ K_t });
  const R = i.of('R_ll');
  const U = i.of('U');
  const I_0 = i.of('I0');
  return {
    Kv: K_v,
    n0: speed.noLoadSpeed.of({ K_v, U, I_0, R }),
    I_stall: torque.stallCurrent.of({ U, R }),
    M_stall: torque.stallTorque.of({ K_t, U, R }),
    eta_max: power.bestEfficiency.of({ I_0, U, R }),
    slope: speed.speedSlope.of({ R, K_t }),
    tau_mech: speed.mechanicalTimeConstant.of({ R, J: i.of('J'), K_t }),
  };
};

/** A sheet with its nominal point, and where it prints thermal data the current that the winding stands for ever. */
const wholeSheet: Work = (i) => {
  const K_t = i.of('kM');
  const K_v = constants.speedConstant.of({ K_t });
  const I_0 = i.of('I0');
  const R = i.of('R_ll');
  const omega = speed.speedAtTorque.of({ K_v, U: i.of('U'), R, T_m: i.of('M'), K_t, I_0 });
  const nominal = { I_nom: torque.currentForTorque.of({ T_m: i.of('M'), K_t, I_0 }), n_nom: omega };
  if (!i.prints.includes('I_cont')) return { ...sheet(i), ...nominal };
  const theta_lim = i.of('T_max');
  const I = continuousMoving.of({
    dtheta: riseTo.of({ theta_lim, theta_amb: i.of('T_amb') }),
    P_fe: 0,
    P_f: drag.frictionLoss.of({ T_f: torque.noLoadTorque.of({ K_t, I_0 }), omega }),
    R_hot: hot(i, 'R_ll', theta_lim),
    R_wc: i.of('Rth_wh'),
    R_ca: i.of('Rth_ha'),
  });
  return { ...sheet(i), ...nominal, I_cont: I, M_cont: torque.shaftTorque.of({ K_t, I, I_0 }) };
};

const hot = (i: Inputs, from: string, theta: number, theta_ref = room, zero = theta_0) =>
  losses.resistanceAt.of({ R_ref: i.of(from), theta, theta_ref, theta_0: zero });

export const motor: Works = {
  'MOT-01': sheet,
  'MOT-03': sheet,
  'MOT-04': sheet,
  'MOT-06': (i) => {
    const K_t = i.of('kM');
    const I_0 = i.of('I0');
    const R = i.of('R_ll');
    return {
      I: torque.currentForTorque.of({ T_m: i.of('M'), K_t, I_0 }),
      n: speed.speedAtTorque.of({
        K_v: constants.speedConstant.of({ K_t }),
        U: i.of('U'),
        R,
        T_m: i.of('M'),
        K_t,
        I_0,
      }),
    };
  },
  'MOT-07': (i) => {
    const g = { U: i.of('U'), R: i.of('R'), I_0: i.of('I0') };
    const I = power.bestCurrent.of(g);
    return {
      I_opt: I,
      eta_max: power.bestEfficiency.of(g),
      M_opt: torque.shaftTorque.of({ K_t: i.of('Kt'), I, I_0: g.I_0 }),
      P_max_I: power.greatestPowerCurrent.of(g),
    };
  },
  'MOT-08': (i) => {
    const K_v = i.of('Kv');
    const K_tq = constants.torqueConstantQ.of({ K_v });
    return {
      Kt_dc: constants.torqueConstantDc.of({ K_v }),
      Kt_q: K_tq,
      '8.27/Kv': K_tq,
      lambda_m: constants.fluxLinkage.of({ K_v, p: i.of('pole_pairs') }),
      T: torque.airGapTorque.of({ K_t: K_tq, I: i.of('iq') }),
      P_cu: losses.copperLossPhasePeak.of({ R: i.of('R_ll'), i_q: i.of('iq') }),
      Kt_rms: constants.torqueConstantRms.of({ K_v }),
    };
  },
  'MOT-09': (i) => {
    const g = { R: i.of('R_ll'), K_t: i.of('Kt'), J: i.of('J') };
    return {
      Kv: constants.speedConstant.of(g),
      tau_mech: speed.mechanicalTimeConstant.of(g),
      Km: constants.motorConstant.of(g),
    };
  },
  'MOT-11': (i) => ({
    R110: hot(i, 'R25', i.of('T2'), i.of('T1')),
    R110_235: hot(i, 'R25', i.of('T2'), i.of('T1'), 273.15 - 235),
    // Some sheets refer 0.00393 to 25 °C; the case shows what that costs.
    R110_naive: hot(i, 'R25', i.of('T2'), i.of('T1'), i.of('T1') - 1 / copper.alpha20.value),
  }),
  'MOT-12': (i) => {
    const K_t = constants.torqueConstantWarm.of({
      K_t: i.of('Kt_cold'),
      alpha_B: i.of('alpha_B'),
      theta_m: room + i.of('dT_magnet'),
      theta_ref: room,
    });
    const R = hot(i, 'R_cold', room + i.of('dT_winding'));
    const U = i.of('U');
    return {
      Kt_hot: K_t,
      R_hot: R,
      n0_hot: speed.noLoadSpeed.of({ K_v: constants.speedConstant.of({ K_t }), U, I_0: i.of('I0'), R }),
      M_stall_hot: torque.stallTorque.of({ K_t, U, R }),
    };
  },
  'MOT-13': (i) => {
    const P_0 = losses.copperLoss.of({ R: i.of('R25'), I: i.of('I') });
    const R_th = i.of('Rth');
    const theta_amb = i.of('T_amb');
    const alpha = 1 / (theta_amb - theta_0);
    return {
      T_ss: theta_amb + thermal.steadyRiseWarm.of({ P_0, R_th, alpha }),
      T_150_constR: theta_amb + thermal.riseAt.of({ P: P_0, R_th, t: 150, C_th: i.of('C') }),
    };
  },
  'MOT-15': (i) => {
    const theta_max = i.of('T_max');
    const theta_amb = i.of('T_amb');
    const I = thermal.continuousCurrent.of({
      theta_max,
      theta_amb,
      R_hot: hot(i, 'R25', theta_max),
      R_th: i.of('Rth_total'),
    });
    return { I_cont: I, M_cont: torque.shaftTorque.of({ K_t: i.of('kM'), I, I_0: i.of('I0') }) };
  },
  'MOT-16': (i) => {
    const rate = thermal.adiabaticRate.of({
      J_c: i.of('J'),
      rho: i.of('rho'),
      c_p: i.of('c'),
      gamma: i.of('density'),
    });
    return { dTdt: rate, rule: rate };
  },
  'MOT-17': (i) => ({
    class_T: Object.values(insulationClasses).map((celsius) => celsius + 273.15),
    life_factor: thermal.insulationLife.of({ dtheta: i.of('overtemp'), dtheta_half: 10 }),
  }),
  'MOT-18': (i) => {
    const omega = speed.noLoadSpeed.of({ K_v: i.of('Kv'), U: i.of('V'), I_0: 0, R: 1 });
    return { n_max: omega, f_e: speed.electricalFrequency.of({ p: i.of('poles') / 2, omega }) };
  },
  'MOT-19': wholeSheet,
  'MOT-20': wholeSheet,
  'MOT-21': wholeSheet,
  'MOT-22': wholeSheet,
  'MOT-23': (i) => {
    const alpha_B = i.of('alpha');
    const { low, high } = magnets.neodymium.coefficient;
    return {
      B_150: constants.torqueConstantWarm.of({
        K_t: i.of('B_20'),
        alpha_B,
        theta_m: i.of('T_2'),
        theta_ref: i.of('T_1'),
      }),
      inTable: low <= alpha_B && alpha_B <= high,
    };
  },
  'MOT-24': (i) => {
    const at = (ambient: string) =>
      thermal.continuousCurrent.of({ theta_max: i.of('T_max'), theta_amb: i.of(ambient), R_hot: 1, R_th: 1 });
    return { drop: 1 - at('T_hot') / at('T_rated') };
  },
  'MOT-25': (i) => {
    const omega = i.of('n');
    const P_m = power.shaftPower.of({ T_m: i.of('M'), omega });
    // The motor as a whole: what its voltage and current bring.
    const P_el = power.electricalPower.of({ omega, K_v: omega / i.of('U'), I: i.of('I'), R: 0 });
    return {
      P_out: P_m,
      P_in: P_el,
      eta: phases.pointEfficiency.of({ P_m, P_el }),
      loss: phases.pointLoss.of({ P_el, P_m }),
    };
  },
  'MOT-26': (i) => {
    const K_v = (2 * Math.PI * 1000) / 60 / i.of('Ke');
    const dc = constants.torqueConstantDc.of({ K_v });
    const sine = constants.torqueConstantQ.of({ K_v });
    return { Kt_dc: dc, Kt_sin: sine, ratio: dc / sine };
  },
  'MOT-27': (i) => ({
    alpha20: (hot(i, 'R_20', 294.15, 293.15) - i.of('R_20')) / i.of('R_20'),
    conductivity: 1 / copper.resistivity20.value,
  }),
  'MOT-28': (i) => ({
    more: hot(i, 'R_20', i.of('T'), 293.15) - i.of('R_20'),
    resistivity: copper.resistivity20.value,
  }),
  'MOT-29': (i) => ({ R_hot: hot(i, 'R_20', i.of('T'), 293.15, 273.15 - 234.5) }),
  'MOT-30': () => {
    const { A, E, B, F, H } = insulationClasses;
    return { class_T: [A, E, B, F, H].map((celsius) => celsius + 273.15) };
  },
  'MOT-31': (i) => ({
    life_factor: thermal.insulationLife.of({ dtheta: -i.of('cooler'), dtheta_half: 10 }),
    class_N: insulationClasses.N + 273.15,
  }),
};

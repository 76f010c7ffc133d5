/** The cases of loops, describing functions and moves, worked with the library. */
import * as kink from '@/lib/calc/loop/describing';
import { marginsOf, rational, sweep } from '@/lib/calc/loop/response';
import * as sampling from '@/lib/calc/loop/sampling';
import * as second from '@/lib/calc/loop/second-order';
import type { Controller, Plant } from '@/lib/calc/loop/simulation/types';
import { stepTrial } from '@/lib/calc/loop/trial';
import * as tuning from '@/lib/calc/loop/tuning';
import * as duty from '@/lib/calc/motion/duty';
import type { Inputs, Work, Works } from '../case';
import { gainAt, marginsOfLoop } from '../open-loop';

const decibel = (ratio: number | undefined) => 20 * Math.log10(ratio ?? Number.NaN);

export const control: Works = {
  'CTL-01': (i) => {
    const g = { zeta: i.of('zeta'), omega_n: i.of('wn') };
    return {
      Tp: second.peakTime.of(g),
      OS: second.overshoot.of(g),
      Ts: second.settlingTime.of(g),
      Tr_10_90: second.riseTime(g.zeta, g.omega_n),
    };
  },
  'CTL-03': (i) => {
    const zeta = second.dampingOfOvershoot.of({ OS: i.of('OS') });
    return { zeta, wn: second.frequencyOfPeakTime.of({ t_pk: i.of('Tp'), zeta }) };
  },
  'CTL-04': (i) => {
    const m = marginsOfLoop({ gain: i.list('num')[0] ?? Number.NaN, poles: i.list('den_roots') });
    return { GM: decibel(m.gainMargin), PM: m.phaseMargin ?? Number.NaN };
  },
  'CTL-05': (i) => {
    const m = marginsOfLoop({ gain: i.of('K'), poles: i.list('den_roots') });
    return {
      GM: decibel(m.gainMargin),
      PM: m.phaseMargin ?? Number.NaN,
      w_gc: m.gainCrossover ?? Number.NaN,
      w_pc: m.phaseCrossover ?? Number.NaN,
    };
  },
  'CTL-07': (i) => ({ PM: i.list('zeta').map((zeta) => second.phaseMarginOfDamping.of({ zeta })) }),
  'CTL-08': (i) => {
    const omega = 2 * Math.PI * i.of('f_c');
    const t_s = 1 / i.of('f_s');
    return {
      phase_zoh: sampling.holdPhase.of({ omega, t_s }),
      phase_delay: sampling.delayPhase.of({ omega, t_d: i.of('T_comp') }),
      mag_zoh: sampling.holdGain.of({ omega, t_s }),
    };
  },
  'CTL-09': (i) => {
    const m = marginsOfLoop({ gain: 1, poles: i.list('den_roots') });
    const K_u = m.gainMargin ?? Number.NaN;
    const P_u = (2 * Math.PI) / (m.phaseCrossover ?? Number.NaN);
    return {
      Ku: K_u,
      Pu: P_u,
      Kp: tuning.limitGainPID.of({ K_u }),
      Ti: tuning.limitResetPID.of({ P_u }),
      Td: tuning.limitRatePID.of({ P_u }),
      Kp_PI: tuning.limitGainPI.of({ K_u }),
      Ti_PI: tuning.limitResetPI.of({ P_u }),
      Kp_P: tuning.limitGainP.of({ K_u }),
    };
  },
  'CTL-10': (i) => {
    const g = { tau: i.of('T'), K_s: i.of('K'), t_d: i.of('L') };
    return {
      Kp_P: tuning.stepGainP.of(g),
      Kp_PI: tuning.stepGainPI.of(g),
      ki_PI: tuning.stepIntegralPI.of(g),
      Kp_PID: tuning.stepGainPID.of(g),
      Ti_PID: tuning.stepResetPID.of(g),
      Td_PID: tuning.stepRatePID.of(g),
    };
  },
  'CTL-12': (i) => {
    const b = i.of('b');
    return {
      mag: i.list('A').map((A) => kink.backlashGain.of({ b, A })),
      phase: i.list('A').map((A) => kink.backlashPhase.of({ b, A })),
    };
  },
  'CTL-13': (i) => {
    const g = { M: i.of('M'), A: i.of('A') };
    const q = i.of('q');
    return {
      N_relay: kink.relayGain.of(g),
      N_relay_dz: kink.relayDeadBandGain.of({ ...g, d: q }),
      N_quant_peak: kink.quantiserGain(q, kink.quantiserPeakAmplitude * q),
      A_at_peak: kink.quantiserPeakAmplitude * q,
      'N_quant_2.3': kink.quantiserGain(q, 2.3),
    };
  },
  'CTL-14': (i) => {
    // The loop swings where it has lost 180°, at the amplitude whose relay gain makes up for the plant's.
    const plant = { gain: 1, poles: [0, -1, -2] };
    const w = marginsOfLoop(plant).phaseCrossover ?? Number.NaN;
    return { w, A: kink.relayGain.of({ M: i.of('M'), A: 1 }) * gainAt(plant, w) };
  },
  'CTL-16': (i) => {
    const g = { t_s: i.of('T'), tau: i.of('tau') };
    const a_be = sampling.lagBackward.of(g);
    const a_zoh = sampling.lagExact.of(g);
    return {
      a_be,
      a_tustin: sampling.lagTrapezoidal.of(g),
      a_zoh,
      y10_be: 1 - a_be ** 10,
      y10_zoh: 1 - a_zoh ** 10,
    };
  },
  'CTL-18': moves(),
  'CTL-19': (i) => {
    const times = i.list('t');
    const phases = i.list('T').map((torque, k) => ({ torque, duration: times[k] ?? Number.NaN }));
    return { T_rms: duty.effectiveTorque(phases) };
  },
  ...Object.fromEntries(
    ['CTL-21', 'CTL-22', 'CTL-23', 'CTL-24', 'CTL-25', 'CTL-26', 'CTL-27', 'CTL-28', 'CTL-29'].map((id) => [
      id,
      open,
    ]),
  ),
  'CTL-30': (i) => {
    const g = { zeta: i.of('zeta'), omega_n: i.of('wn') };
    const { metrics } = springAndDamper(g);
    return {
      Tp: second.peakTime.of(g),
      OS: second.overshoot.of(g),
      Ts: second.settlingTime.of(g),
      OS_simulated: metrics.overshoot,
      Ts_simulated: metrics.settling ?? Number.NaN,
    };
  },
  'CTL-31': (i) => {
    const omega_n = 10;
    const zetas = i.list('zeta');
    return {
      Tr: zetas.map((zeta) => omega_n * second.riseTime(zeta, omega_n)),
      Tr_simulated: zetas.map(
        (zeta) => omega_n * (springAndDamper({ zeta, omega_n }).metrics.rise ?? Number.NaN),
      ),
    };
  },
  'CTL-20': (i) => {
    const t_d = i.of('Td');
    const K = i.of('K');
    const K_u = sampling.ultimateGain.of({ t_d, K });
    return {
      w_u: sampling.ultimateFrequency.of({ t_d }),
      K_u,
      PM_at_half: sampling.integratorPhaseMargin.of({ K_p: K_u / 2, K, t_d }),
    };
  },
};

function moves(): Work {
  return (i) => {
    const limits = { omega_lim: i.of('v'), alpha_lim: i.of('a') };
    return {
      t_trap: duty.fastestMove.of({ phi: i.of('d1'), ...limits }),
      t_tri: duty.fastestMove.of({ phi: i.of('d2'), ...limits }),
      v_peak_tri: duty.fastestMoveSpeed.of({ phi: i.of('d2'), ...limits }),
    };
  };
}

/** Margins of an open loop by its polynomials, over six decades. */
function open(i: Inputs): ReturnType<Work> {
  const swept = (delay: number) => sweep(rational(i.list('num'), i.list('den'), delay), 1e-3, 1e3);
  const m = marginsOf(swept(0));
  const all: Record<string, number> = {
    GM: m.gainMargin ?? Number.NaN,
    w_pc: m.phaseCrossover ?? Number.NaN,
    PM: m.phaseMargin ?? Number.NaN,
    w_gc: m.gainCrossover ?? Number.NaN,
  };
  if (i.prints.includes('PM_delayed'))
    all.PM_delayed = marginsOf(swept(i.of('delay'))).phaseMargin ?? Number.NaN;
  return Object.fromEntries(i.prints.map((name) => [name, all[name] ?? Number.NaN]));
}

/** One inertia under a current command whose gains make the loop omega_n² / (s (s + 2 zeta omega_n)). */
function springAndDamper({ zeta, omega_n }: { readonly zeta: number; readonly omega_n: number }) {
  const none = Number.POSITIVE_INFINITY;
  const plant: Plant = {
    ratio: 1,
    motor: { torqueConstant: 1, resistance: 1e-6, inductance: 0, dragTorque: 0, inertia: 0.5 },
    supply: {
      voltage: 1e6,
      resistance: 0,
      motorCurrentLimit: none,
      batteryCurrentLimit: none,
      regenCurrentLimit: none,
      dutyLimit: 1,
      canReverse: true,
    },
    train: { stiffness: 1e6, damping: 100, backlash: 0, efficiency: 1 },
    load: {
      inertia: 0.5,
      gravityTorque: 0,
      gravityAngle: 0,
      externalTorque: 0,
      dryFriction: 0,
      breakaway: 1,
      stribeckSpeed: 0.01,
      // The damping of the open loop stands at the output.
      viscousFriction: 2 * zeta * omega_n,
      lowStop: -none,
      highStop: none,
      stopStiffness: none,
    },
  };
  const controller: Controller = {
    period: 1e-4,
    kp: omega_n ** 2,
    ki: 0,
    kd: 0,
    travel: 1,
    derivativeFilter: 0,
    deadBand: 0,
    outputLimit: 1e6,
    rampTime: 0,
    integralLimit: 0,
    commandQuantum: 0,
    sensor: { quantum: 0, noise: 0, backlash: 0, offset: 0, filter: 0, period: 0, sign: 1 },
    latency: 0,
    drive: { kind: 'current', full: 1, lag: 0, sign: 1, framePeriod: 0 },
    followingLimit: none,
    followingTime: 0,
    watch: { low: -none, high: none, jump: none, stillTime: none, stillCommand: none },
    whenTripped: 'coast',
  };
  return stepTrial(plant, controller, 0.1, { innerStep: 1e-4, duration: 2 });
}

/** Simulated steps and margins of eight loops, and margins of three open loops with real poles, against the control package of Octave (steps.m beside this file made steps.json). */

import type { LinearLoop } from '@/lib/calc/loop/linear';
import { controllerResponse, plantSweep } from '@/lib/calc/loop/linear';
import { marginsOf, through } from '@/lib/calc/loop/response';
import { simulate } from '@/lib/calc/loop/simulation/simulate';
import type { Controller, DriveKind, Plant, Result } from '@/lib/calc/loop/simulation/types';
import { ideal, plain } from '../../../calc/loop/simulation/systems';
import { marginsOfLoop } from '../../open-loop';
import type { Independent } from '../method';
import made from './steps.json';
import given from './systems.json';

type System = (typeof given.systems)[number];

const { ratio, torqueConstant, resistance, rotorInertia, voltage } = given.plant;

function plantOf(s: System): Plant {
  return {
    ...ideal,
    ratio,
    motor: { torqueConstant, resistance, inductance: 0, dragTorque: 0, inertia: rotorInertia },
    // Where no voltage is commanded it limits nothing, so that a swing grows on.
    supply: { ...ideal.supply, voltage: s.kind === 'duty' ? voltage : 1e200 },
    train: { stiffness: s.stiffness, damping: s.damping, backlash: 0, efficiency: 1 },
    load: { ...ideal.load, inertia: s.inertia, viscousFriction: s.viscous },
  };
}

function controllerOf(s: System, times = 1): Controller {
  return {
    ...plain,
    period: s.period,
    kp: s.kp * times,
    ki: s.ki * times,
    kd: s.kd * times,
    travel: s.travel,
    derivativeFilter: s.slope,
    sensor: { ...plain.sensor, filter: s.filter },
    latency: s.delay * s.period,
    drive: { ...plain.drive, kind: s.kind as DriveKind, full: s.full, lag: s.lag },
  };
}

function stepOf(s: System, innerStep: number, duration: number, samples: number, times = 1): Result {
  return simulate(plantOf(s), controllerOf(s, times), {
    duration,
    innerStep,
    target: { kind: 'hold', angle: 1 },
    start: { angle: 0 },
    seed: 1,
    samples,
  });
}

/** How often the gain may be taken until the simulated step swings up instead of down. */
function limitOf(s: System): number {
  const grows = (times: number) => {
    const { output } = stepOf(s, 1e-4, 3, 6001, times);
    const part = (from: number, to: number) => {
      const some = output.subarray(Math.round(from * 6000), Math.round(to * 6000));
      const mean = some.reduce((a, b) => a + b, 0) / some.length;
      return Math.sqrt(some.reduce((a, b) => a + (b - mean) ** 2, 0) / some.length);
    };
    return !(part(0.8, 1) < part(0.5, 0.7));
  };
  let low = 1;
  let high = 2;
  while (!grows(high)) [low, high] = [high, 2 * high];
  while (high / low > 1.002) {
    const middle = Math.sqrt(low * high);
    if (grows(middle)) high = middle;
    else low = middle;
  }
  return Math.sqrt(low * high);
}

function linearOf(s: System): LinearLoop {
  const perAmpere = torqueConstant * ratio;
  const rotor = rotorInertia * ratio ** 2;
  const kinds: Readonly<Record<DriveKind, LinearLoop['drive']>> = {
    current: { torque: perAmpere * s.full, damping: 0, lag: s.lag, regulator: 0, speed: 0 },
    duty: {
      torque: ((perAmpere * voltage) / resistance) * s.full,
      damping: perAmpere ** 2 / resistance,
      lag: s.lag,
      regulator: 0,
      speed: 0,
    },
    speed: {
      torque: ((rotor / s.lag) * s.full) / ratio,
      damping: rotor / s.lag,
      lag: s.lag,
      regulator: (rotor / (4 * s.lag ** 2)) * (rotor / (rotor + s.inertia)),
      speed: s.full / ratio,
    },
  };
  return {
    gains: { kp: s.kp, ki: s.ki, kd: s.kd, derivativeFilter: s.slope },
    travel: s.travel,
    drive: kinds[s.kind as DriveKind],
    rotorInertia: rotor,
    loadInertia: s.inertia,
    stiffness: s.stiffness,
    damping: s.damping,
    viscousFriction: s.viscous,
    filter: s.filter,
    period: s.period,
    delay: s.delay * s.period,
  };
}

function work(s: System): ReturnType<Independent['work']> {
  const other = made.systems.find(({ id }) => id === s.id);
  if (other === undefined) throw new Error(`steps.json has no ${s.id}`);
  const result = stepOf(s, 2e-5, s.time, 26);
  const linear = linearOf(s);
  const response = marginsOf(through(plantSweep(linear), controllerResponse(linear.gains)));
  const outputs = [1, 2, 3, 5, 8, 13, 21].map((i) => {
    const time = other.time[i] ?? Number.NaN;
    const own = result.output[i] ?? Number.NaN;
    return [
      `output at ${time.toFixed(3)} s`,
      { own, other: other.output[i] ?? Number.NaN, tolerance: 1e-4 },
    ] as const;
  });
  return {
    ...Object.fromEntries(outputs),
    'gain at the limit, by simulation': { own: limitOf(s), other: other.gainMargin, tolerance: 0.01 },
    'phase margin, by frequency response': {
      own: response.phaseMargin ?? Number.NaN,
      other: other.phaseMargin,
      tolerance: 0.02,
    },
  };
}

const simulated: readonly Independent[] = given.systems.map((s, k) => ({
  id: `IND-L${k + 1}`,
  topic: 'position loop',
  title: s.title,
  method: 'discrete state space by the control package of Octave: step, pole, freqresp',
  work: () => work(s),
}));

const openLoops: readonly Independent[] = made.open.map((other, k) => ({
  id: `IND-M${k + 1}`,
  topic: 'position loop',
  title: `open loop of gain ${other.gain} with poles at ${other.poles.join(', ')} rad/s`,
  method: 'margin by the control package of Octave',
  work: () => {
    const own = marginsOfLoop(other);
    const row = (value: number | undefined, by: number) => ({
      own: value ?? Number.NaN,
      other: by,
      tolerance: 1e-6,
    });
    return {
      'gain margin': row(own.gainMargin, other.gainMargin),
      'phase margin': row(own.phaseMargin, (other.phaseMargin * Math.PI) / 180),
      'frequency of gain 1': row(own.gainCrossover, other.gainCrossover),
      'frequency of −180°': row(own.phaseCrossover, other.phaseCrossover),
    };
  },
}));

export const loopSteps: readonly Independent[] = [...simulated, ...openLoops];

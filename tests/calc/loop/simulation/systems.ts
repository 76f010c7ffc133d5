/** Plants and loops that the tests of the simulation start from. */
import type { Controller, Plant } from '@/lib/calc/loop/simulation/types';

/** A geared actuator of some 60 N m: ratio 100, an arm of 0.3 kg m². */
export const actuator: Plant = {
  ratio: 100,
  motor: { torqueConstant: 0.03, resistance: 0.1, inductance: 0, dragTorque: 0.01, inertia: 6e-6 },
  supply: {
    voltage: 24,
    resistance: 0.02,
    motorCurrentLimit: 30,
    batteryCurrentLimit: Number.POSITIVE_INFINITY,
    regenCurrentLimit: Number.POSITIVE_INFINITY,
    dutyLimit: 1,
    canReverse: true,
  },
  train: { stiffness: 3000, damping: 1, backlash: 0.004, efficiency: 0.8 },
  load: {
    inertia: 0.3,
    gravityTorque: 10,
    gravityAngle: 0,
    externalTorque: 0,
    dryFriction: 0.5,
    breakaway: 1.4,
    stribeckSpeed: 0.05,
    viscousFriction: 0.1,
    lowStop: -2,
    highStop: 2,
    stopStiffness: 20_000,
  },
};

export const positioner: Controller = {
  period: 1e-3,
  kp: 8,
  ki: 4,
  kd: 0.1,
  travel: 3,
  derivativeFilter: 2e-3,
  deadBand: 0.002,
  outputLimit: 1,
  rampTime: 0.05,
  integralLimit: 0.3,
  commandQuantum: 3 / 4096,
  sensor: {
    quantum: 3 / 16384,
    noise: 1e-4,
    backlash: 0,
    offset: 0,
    filter: 0,
    period: 0,
    sign: 1,
  },
  latency: 2e-3,
  drive: { kind: 'duty', full: 1, lag: 2e-3, sign: 1, framePeriod: 0 },
  followingLimit: Number.POSITIVE_INFINITY,
  followingTime: 0,
  watch: {
    low: Number.NEGATIVE_INFINITY,
    high: Number.POSITIVE_INFINITY,
    jump: Number.POSITIVE_INFINITY,
    stillTime: Number.POSITIVE_INFINITY,
    stillCommand: Number.POSITIVE_INFINITY,
  },
  whenTripped: 'coast',
};

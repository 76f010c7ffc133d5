/** Plants and loops that the tests of the simulation start from. */
import type { Controller, Plant } from '@/lib/calc/loop/simulation/types';

const without = Number.POSITIVE_INFINITY;

/** A geared actuator of some 60 N m: ratio 100, an arm of 0.3 kg m². */
export const actuator: Plant = {
  ratio: 100,
  motor: { torqueConstant: 0.03, resistance: 0.1, inductance: 0, dragTorque: 0.01, inertia: 6e-6 },
  supply: {
    voltage: 24,
    resistance: 0.02,
    motorCurrentLimit: 30,
    batteryCurrentLimit: without,
    regenCurrentLimit: without,
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

/** The same without friction, play, weight, stops and limits: what closed forms and linear theory speak of. */
export const ideal: Plant = {
  ratio: 100,
  motor: { ...actuator.motor, dragTorque: 0 },
  supply: { ...actuator.supply, resistance: 0, motorCurrentLimit: without },
  train: { stiffness: 3000, damping: 0, backlash: 0, efficiency: 1 },
  load: {
    inertia: 0.3,
    gravityTorque: 0,
    gravityAngle: 0,
    externalTorque: 0,
    dryFriction: 0,
    breakaway: 1,
    stribeckSpeed: 0.05,
    viscousFriction: 0,
    lowStop: -without,
    highStop: without,
    stopStiffness: 20_000,
  },
};

/** A loop that reads and commands without steps, noise, band, ramp or delay. */
export const plain: Controller = {
  period: 1e-3,
  kp: 1,
  ki: 0,
  kd: 0,
  travel: 1,
  derivativeFilter: 0,
  deadBand: 0,
  outputLimit: without,
  rampTime: 0,
  integralLimit: without,
  commandQuantum: 0,
  sensor: { quantum: 0, noise: 0, backlash: 0, offset: 0, filter: 0, period: 0, sign: 1 },
  latency: 0,
  drive: { kind: 'duty', full: 1, lag: 0, sign: 1, framePeriod: 0 },
  followingLimit: without,
  followingTime: 0,
  watch: { low: -without, high: without, jump: without, stillTime: without, stillCommand: without },
  whenTripped: 'coast',
};

/** A club loop as it is: 1 kHz, 2 ms late, 14 bits, some noise. */
export const positioner: Controller = {
  ...plain,
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
  sensor: { ...plain.sensor, quantum: 3 / 16384, noise: 1e-4 },
  latency: 2e-3,
  drive: { ...plain.drive, lag: 2e-3 },
};

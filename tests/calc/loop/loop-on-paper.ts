// A plain actuator for tests of the loop: rotor and load on a spring, nothing rubs, nothing plays.
import type { LinearLoop } from '@/lib/calc/loop/linear';
import type { Controller, DriveKind, Plant } from '@/lib/calc/loop/simulation/types';

const none = Number.POSITIVE_INFINITY;

export const plainPlant: Plant = {
  ratio: 50,
  motor: { torqueConstant: 0.05, resistance: 0.1, inductance: 0, dragTorque: 0, inertia: 1e-4 },
  supply: {
    voltage: 24,
    resistance: 0,
    motorCurrentLimit: none,
    batteryCurrentLimit: none,
    regenCurrentLimit: none,
    dutyLimit: 1,
    canReverse: true,
  },
  train: { stiffness: 4000, damping: 4, backlash: 0, efficiency: 1 },
  load: {
    inertia: 0.4,
    gravityTorque: 0,
    gravityAngle: 0,
    externalTorque: 0,
    dryFriction: 0,
    breakaway: 1,
    stribeckSpeed: 0.01,
    viscousFriction: 0.5,
    lowStop: -none,
    highStop: none,
    stopStiffness: none,
  },
};

export function plainController(kind: DriveKind, gains: { kp: number; ki: number; kd: number }): Controller {
  return {
    period: 2e-3,
    ...gains,
    travel: 2,
    derivativeFilter: 0,
    deadBand: 0,
    outputLimit: 1e6,
    rampTime: 0,
    integralLimit: 1e6,
    commandQuantum: 0,
    sensor: { quantum: 0, noise: 0, backlash: 0, offset: 0, filter: 1e-3, period: 0, sign: 1 },
    latency: 4e-3,
    drive: { kind, full: fullOf[kind], lag: 8e-3, sign: 1, framePeriod: 0 },
    followingLimit: none,
    followingTime: 0,
    watch: { low: -none, high: none, jump: none, stillTime: none, stillCommand: none },
    whenTripped: 'coast',
  };
}

const fullOf: Readonly<Record<DriveKind, number>> = { duty: 1, speed: 200, current: 30 };

/** The same by hand: what each drive is to the loop, written out apart from the formulas. */
export function plainLinear(kind: DriveKind, gains: { kp: number; ki: number; kd: number }): LinearLoop {
  const rotorInertia = 0.25;
  const drives: Readonly<Record<DriveKind, LinearLoop['drive']>> = {
    // 50 × 0.05 N·m/A = 2.5 N·m/A at the output: 240 A at rest, and 2.5²/0.1 Ω of back-EMF.
    duty: { torque: 600, damping: 62.5, lag: 8e-3, regulator: 0, speed: 0 },
    current: { torque: 75, damping: 0, lag: 8e-3, regulator: 0, speed: 0 },
    // 0.25 kg·m² / 8 ms = 31.25 N·m·s/rad, and an integral critically damped for both masses.
    speed: {
      torque: 31.25 * 4,
      damping: 31.25,
      lag: 8e-3,
      regulator: (31.25 / (4 * 8e-3)) * (0.25 / 0.65),
      speed: 4,
    },
  };
  return {
    gains: { ...gains, derivativeFilter: 0 },
    travel: 2,
    drive: drives[kind],
    rotorInertia,
    loadInertia: 0.4,
    stiffness: 4000,
    damping: 4,
    viscousFriction: 0.5,
    filter: 1e-3,
    period: 2e-3,
    delay: 4e-3,
  };
}

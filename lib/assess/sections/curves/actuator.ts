// Motor, drive and train as torque over speed needs them, each number with its origin.
import type { EnvelopeActuator } from '@/lib/calc/motion/envelope';
import type { Traced } from '@/lib/quantity/traced';
import type { StepInput } from '../../assessment';
import { practice } from '../../sheet';
import type { TrainWork, Work } from '../../work';
import { asDirect, type MotorWork } from '../motor/currents';

export interface Actuator {
  readonly speedConstant: Traced;
  readonly resistance: Traced;
  readonly noLoadCurrent: Traced;
  readonly ratio: Traced;
  readonly trainEfficiency: Traced;
  readonly driveEfficiency: Traced;
  /** Null where there is no limit. */
  readonly motorCurrentLimit: Traced | null;
  readonly batteryCurrentLimit: Traced | null;
  readonly dutyLimit: Traced | null;
  readonly maxSpeed: Traced | null;
}

export function actuatorOf(work: Work, train: TrainWork, motor: MotorWork): Actuator {
  const { drive, motor: data, supply } = work.design;
  const limit = drive.motorCurrentLimit;
  return {
    speedConstant: data.speedConstant,
    resistance: motor.hotResistance,
    noLoadCurrent: motor.noLoadCurrent,
    ratio: train.ratio,
    trainEfficiency: train.drivingEfficiency,
    driveEfficiency: practice(0.95, 'efficiency of the drive, common practice, no source'),
    motorCurrentLimit: limit === null ? null : asDirect(work, limit, 'I_lim.envelope'),
    // A bench supply's own limit acts as the battery limit does.
    batteryCurrentLimit: least(
      drive.batteryCurrentLimit,
      supply.kind === 'bench' ? supply.benchCurrent : null,
    ),
    dutyLimit: drive.dutyLimit,
    maxSpeed: data.maxSpeed,
  };
}

/** The smaller of two; the other where one is not there. */
export function least(a: Traced | null, b: Traced | null): Traced | null {
  if (a === null || b === null) return a ?? b;
  return b.value < a.value ? b : a;
}

/** The numbers alone. */
export function plain(actuator: Actuator): EnvelopeActuator {
  const { speedConstant, resistance, noLoadCurrent, ratio, trainEfficiency, driveEfficiency } = actuator;
  return {
    speedConstant: speedConstant.value,
    resistance: resistance.value,
    noLoadCurrent: noLoadCurrent.value,
    ratio: ratio.value,
    trainEfficiency: trainEfficiency.value,
    driveEfficiency: driveEfficiency.value,
    motorCurrentLimit: actuator.motorCurrentLimit?.value,
    batteryCurrentLimit: actuator.batteryCurrentLimit?.value,
    dutyLimit: actuator.dutyLimit?.value,
    maxSpeed: actuator.maxSpeed?.value,
  };
}

/** The same by the symbols of the formulas. */
export function actuatorInputs(actuator: Actuator): Readonly<Record<string, Traced | null>> {
  return {
    K_v: actuator.speedConstant,
    R: actuator.resistance,
    I_0: actuator.noLoadCurrent,
    I_lim: actuator.motorCurrentLimit,
    I_bat_lim: actuator.batteryCurrentLimit,
    D_max: actuator.dutyLimit,
    omega_max: actuator.maxSpeed,
    eta_d: actuator.driveEfficiency,
    i: actuator.ratio,
    eta: actuator.trainEfficiency,
  };
}

/** Inputs of a curve by their symbols, those that are not there left out. */
export function curveInputs(named: Readonly<Record<string, Traced | null>>): StepInput[] {
  const inputs: StepInput[] = [];
  for (const symbol in named) {
    const traced = named[symbol];
    if (traced !== null && traced !== undefined) inputs.push({ symbol, ...traced });
  }
  return inputs;
}

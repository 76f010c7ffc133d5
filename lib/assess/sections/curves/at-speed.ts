// The torque that is left at the duty's output speed, step by step: what each limit lets through, and the least of them.
import {
  currentAtDuty,
  currentAtVoltage,
  drawnAtMost,
  drawnPower,
  passedOn,
  torqueLeft,
  torqueWithinSpeed,
} from '@/lib/calc/motion/limits';
import { currentAtPower } from '@/lib/calc/motor/power';
import { greatestPower } from '@/lib/calc/supply/pack';
import type { Traced } from '@/lib/quantity/traced';
import type { TrainWork, Work } from '../../work';
import { type Actuator, least } from './actuator';

interface State {
  readonly openVoltage: Traced;
  readonly resistance: Traced;
}

/** Torque at the output, N m: the point of the curve at the duty's speed. */
export function torqueAtSpeed(work: Work, actuator: Actuator, train: TrainWork, state: State): Traced {
  const { openVoltage: U_oc, resistance: R_s } = state;
  const { speedConstant: K_v, resistance: R, batteryCurrentLimit: I_bat_lim } = actuator;
  const omega = train.motorSpeed;
  const through = (P_s: Traced, as: string) => {
    const P_el = work.sheet.work(
      'output',
      'output',
      passedOn,
      { P_s, eta_d: actuator.driveEfficiency },
      `P_el.${as}`,
    );
    return work.sheet.work('output', 'output', currentAtPower, { P_el, omega, K_v, R }, `I_P.${as}`);
  };
  const linear = { U_oc, omega, K_v, R, R_s };
  const { dutyLimit: D_max, maxSpeed: omega_max } = actuator;
  const byVoltage =
    D_max === null
      ? work.sheet.work('output', 'output', currentAtVoltage, linear)
      : work.sheet.work('output', 'output', currentAtDuty, { ...linear, D_max });
  let current: Traced = least(byVoltage, actuator.motorCurrentLimit) ?? byVoltage;
  if (I_bat_lim !== null) {
    const I_s = work.sheet.work('output', 'output', drawnAtMost, { I_bat_lim, U_oc, R_s });
    const P_s = work.sheet.work('output', 'output', drawnPower, { I_s, U_oc, R_s });
    current = least(current, through(P_s, 'battery')) ?? current;
  }
  if (R_s.value > 0) {
    const P_s = work.sheet.work('output', 'output', greatestPower, { U_oc, R_s });
    current = least(current, through(P_s, 'source')) ?? current;
  }
  const left = work.sheet.work(
    'output',
    'output',
    torqueLeft,
    { I: current, I_0: actuator.noLoadCurrent, K_v, i: actuator.ratio, eta: actuator.trainEfficiency },
    undefined,
    'At the least of the currents that voltage, drive, battery and source let through.',
  );
  return omega_max === null
    ? left
    : work.sheet.work('output', 'output', torqueWithinSpeed, { T: left, omega, omega_max });
}

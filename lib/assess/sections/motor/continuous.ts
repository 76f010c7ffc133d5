// Torque that the motor stands without end, at rest and in motion, at its shaft.

import { drag } from '@/lib/calc/motor/drag';
import { shaftTorque } from '@/lib/calc/motor/torque';
import { continuousHold, continuousMoving } from '@/lib/calc/thermal/continuous';
import { riseTo } from '@/lib/calc/thermal/mount';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import { addFigure, type TrainWork, type Work } from '../../work';
import { dragCurrent, type MotorWork } from './currents';

export interface Continuous {
  /** N m at the shaft. */
  readonly atRest: Traced;
  readonly moving: Traced;
}

/** Works the continuous torques and adds their figures. */
export function continuous(work: Work, train: TrainWork, motor: MotorWork): Continuous {
  const { duty, motor: data } = work.design;
  const { R_wc, R_ca } = motor.thermal;
  const R_hot = motor.hotResistance;
  const K_t = motor.warm.torqueConstant;
  const { sheet } = work;
  const dtheta = sheet.work(
    'motor',
    'motor',
    riseTo,
    { theta_lim: data.windingLimit, theta_amb: duty.ambient },
    'dtheta_to.continuous',
  );
  const omega = train.motorSpeed;
  const left = practice(0, 'no-load current not entered: drag left out');
  const { drag: parts } = motor;
  const P_fe =
    parts === null
      ? left
      : sheet.work('motor', 'motor', drag.ironLoss, { b_fe: parts.perSpeed, omega }, 'P_fe.out');
  const P_f =
    parts === null
      ? left
      : sheet.work('motor', 'motor', drag.frictionLoss, { T_f: parts.dry, omega }, 'P_f.out');
  const torque = (I: Traced, I_0: Traced, as: string) =>
    sheet.work('motor', 'motor', shaftTorque, { K_t, I, I_0 }, as);
  const rest = sheet.work('motor', 'motor', continuousHold, { dtheta, R_hot, R_wc, R_ca });
  const turning = sheet.work('motor', 'motor', continuousMoving, { dtheta, P_fe, P_f, R_hot, R_wc, R_ca });
  const found = {
    atRest: torque(rest, practice(0, 'at rest no drag'), 'T_cont_0'),
    moving: torque(turning, dragCurrent(work, parts, K_t, motor.noLoadCurrent, omega, 'cont'), 'T_cont'),
  };
  const figure = (key: string, label: string, symbol: string, value: Traced) =>
    addFigure(work, {
      key: `motor.${key}`,
      section: 'motor',
      label,
      symbol,
      unit: 'N m',
      value,
      better: 'more',
    });
  figure(
    'continuousHold',
    'Torque at the motor’s shaft that it holds at rest without end',
    'T_cont_0',
    found.atRest,
  );
  figure(
    'continuousTorque',
    'Torque at the motor’s shaft without end, at the output speed',
    'T_cont',
    found.moving,
  );
  return found;
}

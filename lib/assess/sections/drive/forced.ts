// What drive and supply can force on the train at stall: judged on the unsafe side, without friction and cold.
import { outputTorque } from '@/lib/calc/motion/inertia';
import { currentAtPower } from '@/lib/calc/motor/power';
import {
  airGapTorque,
  holdCurrent,
  limitedStallTorque,
  stallCurrent,
  stallTorque,
} from '@/lib/calc/motor/torque';
import { batteryPower } from '@/lib/calc/supply/duty';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import { addFigure, type DriveWork, type TrainWork, type Work } from '../../work';
import { asDirect, type MotorWork } from '../motor/currents';
import { addTimeToLimit, type HeatRoom } from '../motor/stall-time';
import { missingVoltage, type Source } from '../supply/source';

/** Works the torque that can be forced at stall and adds its figures. */
export function forced(
  work: Work,
  train: TrainWork,
  motor: MotorWork,
  source: Source,
  room: HeatRoom,
): DriveWork {
  const stall = atStall(work, motor, source);
  const out =
    stall === null
      ? null
      : work.sheet.work(
          'drive',
          'drive',
          outputTorque,
          {
            N: train.ratio,
            eta: practice(1, 'friction left out: the unsafe side for what breaks'),
            T_m: stall,
          },
          'T_forced',
          'Without friction of the train and without drag of the motor.',
        );
  addFigure(work, {
    key: 'drive.stallTorque',
    section: 'drive',
    label: 'Torque at the motor that drive and supply can force at stall',
    symbol: 'T_st',
    unit: 'N m',
    value: stall,
    missing: missingVoltage,
  });
  addFigure(work, {
    key: 'drive.forced',
    section: 'drive',
    label: 'Torque at the output that drive and supply can force',
    symbol: 'T_forced',
    unit: 'N m',
    value: out,
    // More of it breaks more: what is needed is the peak torque, and that has its own check.
    better: 'less',
    missing: missingVoltage,
    headline: true,
  });
  const current =
    stall === null
      ? null
      : work.sheet.work('drive', 'drive', holdCurrent, { T_m: stall, K_t: motor.torqueConstant }, 'I_stall');
  addTimeToLimit(work, motor, room, current, {
    key: 'drive.stallTime',
    section: 'drive',
    label: 'Time stalled at the drive’s limit until the winding’s limit',
    as: 'stall',
  });
  return { stallTorque: stall, forced: out };
}

function atStall(work: Work, motor: MotorWork, source: Source): Traced | null {
  const limit = leastLimit(work, source);
  const { resistance: R } = work.design.motor;
  const K_t = motor.torqueConstant;
  const U = source.full;
  if (U === null)
    return limit === null
      ? null
      : work.sheet.work(
          'drive',
          'drive',
          airGapTorque,
          { K_t, I: limit },
          'T_st',
          'The supply’s voltage is not known: the current limit alone.',
        );
  work.sheet.work('drive', 'drive', stallCurrent, { U, R });
  if (limit === null)
    return work.sheet.work(
      'drive',
      'drive',
      stallTorque,
      { K_t, U, R },
      'T_st',
      'No current limit is entered: the winding’s cold resistance alone limits, an upper bound.',
    );
  return work.sheet.work(
    'drive',
    'drive',
    limitedStallTorque,
    { K_t, I_lim: limit, U, R },
    'T_st',
    'The least of the limits entered and of the winding’s cold resistance.',
  );
}

/** The motor current that the limits entered leave at standstill, equivalent direct current; null without any. */
function leastLimit(work: Work, source: Source): Traced | null {
  const { motorCurrentLimit } = work.design.drive;
  const own = motorCurrentLimit === null ? null : asDirect(work, motorCurrentLimit, 'I_lim');
  const battery = batteryLimit(work, source);
  if (own === null || battery === null) return own ?? battery;
  return own.value <= battery.value ? own : battery;
}

/** A battery limit is a power limit; at standstill all of it heats the winding, so it hardly limits the torque. */
function batteryLimit(work: Work, source: Source): Traced | null {
  const limit = work.design.drive.batteryCurrentLimit;
  if (limit === null || source.full === null) return null;
  const { speedConstant: K_v, resistance: R } = work.design.motor;
  const P_el = work.sheet.work(
    'drive',
    'drive',
    batteryPower,
    { U: source.full, I_bat: limit },
    'P_bat',
    'Sag and losses of the drive left out, on the unsafe side for what breaks.',
  );
  const given = { P_el, omega: practice(0, 'standstill'), K_v, R };
  return work.sheet.work('drive', 'drive', currentAtPower, given, 'I_P');
}

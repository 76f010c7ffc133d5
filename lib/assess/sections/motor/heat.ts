// How warm the winding gets: by the moves of the duty, and by the longest hold on top of them.

import { dutyTorque, moveTorque } from '@/lib/calc/motion/duty';
import { motorTorque } from '@/lib/calc/motion/inertia';
import { copperLoss, dragLoss, standstillLoss } from '@/lib/calc/motor/losses';
import { noLoadSpeed } from '@/lib/calc/motor/speed';
import { dragTorque, holdCurrent, noLoadTorque } from '@/lib/calc/motor/torque';
import { holdRise, riseLeft, windingTemperature } from '@/lib/calc/thermal/hold';
import { windingRise } from '@/lib/calc/thermal/two-node';
import { thermalEstimateSource } from '@/lib/catalog/motor-thermal';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import { addCheck, addFigure, frictionCaveat, type TrainWork, type Work } from '../../work';
import type { MoveWork } from '../output/motion';
import type { MotorWork } from './currents';
import { addTimeToLimit, type HeatRoom } from './stall-time';
import { type Thermal, thermalData } from './thermal-data';

/** Works losses and temperatures of the winding, adds their figures and the check of the longest hold. Returns what is left. */
export function heat(work: Work, train: TrainWork, motor: MotorWork, move: MoveWork): HeatRoom {
  const thermal = thermalData(work);
  losses(work, train, motor);
  const { duty, motor: data } = work.design;
  const R = motor.hotResistance;
  const dtheta_0 = dutyRise(work, train, motor, move, thermal);
  const worst = work.sheet.work(
    'motor',
    'motor',
    standstillLoss,
    { R, I: motor.hold },
    'P_hold',
    'At rest the worst phase carries up to twice the mean of the three: sinusoidal currents that stand still with the rotor.',
  );
  const whole = work.sheet.work('motor', 'motor', copperLoss, { R, I: motor.hold }, 'P_cu.hold');
  const { R_wc, R_ca, C_w, C_c } = thermal;
  const rise = work.sheet.work('motor', 'motor', holdRise, {
    P_ph: worst,
    R_wc,
    C_w,
    P: whole,
    R_ca,
    C_c,
    t: duty.holdTime,
  });
  const left = work.sheet.work('motor', 'motor', riseLeft, {
    theta_lim: data.windingLimit,
    theta_amb: duty.ambient,
    dtheta_0,
  });
  addFigure(work, {
    key: 'motor.windingTemperature',
    section: 'motor',
    label: 'Winding temperature at the end of the longest hold',
    symbol: 'theta_w',
    unit: 'degC',
    value: work.sheet.work('motor', 'motor', windingTemperature, {
      theta_amb: duty.ambient,
      dtheta_0,
      dtheta_h: rise,
    }),
    better: 'less',
    headline: true,
  });
  addFigure(work, {
    key: 'motor.holdLoss',
    section: 'motor',
    label: 'Copper loss at the holding torque, hot',
    symbol: 'P_cu',
    unit: 'W',
    value: whole,
    better: 'less',
  });
  addCheck(work, {
    key: 'motor.winding',
    section: 'motor',
    label: 'Motor winding, longest hold',
    mode: 'heat',
    unit: 'K',
    demandLabel: 'Rise by the hold, worst phase',
    capacityLabel: 'Rise left to the winding’s limit after the duty’s moves and rests',
    demand: rise,
    capacity: left,
    required: thermal.guessed ? 2.4 : 1.2,
    requiredFrom: thermal.guessed
      ? 'Common practice, no source: a fifth of the rise kept in hand, twice over, for thermal data guessed from the mass'
      : 'Common practice, no source: a fifth of the rise kept in hand',
    caveat: caveatOf(work, train, thermal),
    torque: { at: duty.holdTorque, power: 2 },
    scatter: thermal.guessed ? { low: left.value / 2, high: left.value * 2 } : null,
  });
  const room = { thermal, left };
  addTimeToLimit(work, motor, room, motor.peak, {
    key: 'motor.timeAtPeak',
    section: 'motor',
    label: 'Time at the peak torque, at rest, until the winding’s limit',
    as: 'peak',
  });
  return room;
}

function caveatOf(work: Work, train: TrainWork, thermal: Thermal): string | null {
  const words = [
    ...(thermal.guessed ? [thermalEstimateSource] : []),
    ...(work.design.motor.rotorInertia === null
      ? ['The rotor’s inertia is not entered: what the moves take to accelerate it is left out.']
      : []),
    ...(train.efficiency === null ? [frictionCaveat] : []),
  ];
  return words.length === 0 ? null : words.join(' ');
}

/** Mean rise that moves and rests leave in the winding, K: each rest is taken as held, for the longest hold at most. */
function dutyRise(work: Work, train: TrainWork, motor: MotorWork, move: MoveWork, thermal: Thermal): Traced {
  const { duty } = work.design;
  const T_move = work.sheet.work('duty', 'duty', moveTorque, {
    T_L: duty.holdTorque,
    J_out: move.inertia,
    alpha_rms: move.effectiveAcceleration,
  });
  const T_out = work.sheet.work(
    'duty',
    'duty',
    dutyTorque,
    {
      T_move,
      t_move: duty.moveTime,
      T_rest: duty.holdTorque,
      t_held: duty.holdTime,
      t_rest: duty.restTime,
    },
    'T_rms',
    'Each move carries the holding torque and its own acceleration; each rest is held, for the longest hold at most.',
  );
  addFigure(work, {
    key: 'duty.effectiveTorque',
    section: 'duty',
    label: 'Effective output torque over moves and rests',
    symbol: 'T_rms',
    unit: 'N m',
    value: T_out,
    better: 'less',
  });
  const T_m = work.sheet.work(
    'motor',
    'motor',
    motorTorque,
    { T_out, N: train.ratio, eta: train.drivingEfficiency },
    'T_m.duty',
  );
  const I = work.sheet.work('motor', 'motor', holdCurrent, { T_m, K_t: motor.torqueConstant }, 'I_rms');
  const P = work.sheet.work('motor', 'motor', copperLoss, { R: motor.hotResistance, I }, 'P_cu.duty');
  return work.sheet.work(
    'motor',
    'motor',
    windingRise,
    { P, R_wc: thermal.R_wc, R_ca: thermal.R_ca },
    'dtheta_0',
  );
}

function losses(work: Work, train: TrainWork, motor: MotorWork): void {
  const { noLoadVoltage, speedConstant, resistance } = work.design.motor;
  const known = motor.dragKnown && noLoadVoltage !== null;
  addFigure(work, {
    key: 'motor.peakLoss',
    section: 'motor',
    label: 'Copper loss at the peak torque, hot',
    symbol: 'P_cu',
    unit: 'W',
    value: work.sheet.work(
      'motor',
      'motor',
      copperLoss,
      { R: motor.hotResistance, I: motor.peak },
      'P_cu.peak',
    ),
    better: 'less',
  });
  addFigure(work, {
    key: 'motor.dragLoss',
    section: 'motor',
    label: 'Loss by drag at the output speed',
    symbol: 'P_d',
    unit: 'W',
    value: known ? drag(work, train, motor, noLoadVoltage, speedConstant, resistance) : null,
    better: 'less',
    missing: 'The no-load current or its voltage is not entered.',
  });
}

function drag(work: Work, train: TrainWork, motor: MotorWork, U: Traced, K_v: Traced, R: Traced): Traced {
  const I_0 = motor.noLoadCurrent;
  const T_0 = work.sheet.work('motor', 'motor', noLoadTorque, { K_t: motor.torqueConstant, I_0 });
  const omega_0 = work.sheet.work('motor', 'motor', noLoadSpeed, { K_v, U, I_0, R });
  const s_v = practice(0.5, 'half of the drag grows with speed, common practice, no source');
  const omega = train.motorSpeed;
  const T_d = work.sheet.work('motor', 'motor', dragTorque, { T_0, s_v, omega, omega_0 });
  return work.sheet.work('motor', 'motor', dragLoss, { T_d, omega });
}

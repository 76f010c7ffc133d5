// How warm the winding gets: by the moves of the duty, and by the longest hold on top of them.

import { copperLoss, standstillLoss } from '@/lib/calc/motor/losses';
import { holdRise, riseLeft, windingTemperature } from '@/lib/calc/thermal/hold';
import { windingRise } from '@/lib/calc/thermal/two-node';
import { thermalEstimateSource } from '@/lib/catalog/motor-thermal';
import type { Traced } from '@/lib/quantity/traced';
import { addCheck, addFigure, frictionCaveat, type TrainWork, type Work } from '../../work';
import type { MotorWork } from './currents';
import { magnetCaveat } from './magnets';
import { addTimeToLimit, type HeatRoom } from './stall-time';
import type { Thermal } from './thermal-data';

/** Works losses and temperatures of the winding, adds their figures and the check of the longest hold. Returns what is left. */
export function heat(work: Work, train: TrainWork, motor: MotorWork): HeatRoom {
  const { thermal } = motor;
  const { duty, motor: data } = work.design;
  const R = motor.hotResistance;
  const dtheta_0 = dutyRise(work, motor);
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
    key: 'motor.peakLoss',
    section: 'motor',
    label: 'Copper loss at the peak torque, hot',
    symbol: 'P_cu',
    unit: 'W',
    value: work.sheet.work('motor', 'motor', copperLoss, { R, I: motor.peak }, 'P_cu.peak'),
    better: 'less',
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
    caveat: heatCaveat(work, train, thermal),
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

/** What the heat of the motor rests on that is guessed or left out, in words; null where nothing is. */
export function heatCaveat(work: Work, train: TrainWork, thermal: Thermal): string | null {
  const words = [
    ...(thermal.guessed ? [thermalEstimateSource] : []),
    ...(work.design.motor.rotorInertia === null
      ? ['The rotor’s inertia is not entered: what the moves take to accelerate it is left out.']
      : []),
    ...(work.document.motor.magnets === null ? [magnetCaveat] : []),
    ...(train.efficiency === null ? [frictionCaveat] : []),
  ];
  return words.length === 0 ? null : words.join(' ');
}

/** Mean rise that moves and rests leave in the winding, K. */
function dutyRise(work: Work, motor: MotorWork): Traced {
  const P = work.sheet.work(
    'motor',
    'motor',
    copperLoss,
    { R: motor.hotResistance, I: motor.effective },
    'P_cu.duty',
  );
  const { R_wc, R_ca } = motor.thermal;
  return work.sheet.work('motor', 'motor', windingRise, { P, R_wc, R_ca }, 'dtheta_0');
}

// Electrical power into the motor at the duty's peak against the maker's figure.
import { electricalPower, shaftPower } from '@/lib/calc/motor/power';
import { electricalFrequency } from '@/lib/calc/motor/speed';
import { addCheck, addFigure, type TrainWork, type Work } from '../../work';
import { leftOut, type MotorWork } from './currents';

/** Adds the shaft power at the duty's peak and the check of the greatest power. */
export function power(work: Work, train: TrainWork, motor: MotorWork): void {
  const { maxPower, polePairs: p } = work.design.motor;
  addFigure(work, {
    key: 'motor.shaftPower',
    section: 'motor',
    label: 'Power at the motor shaft, peak torque and output speed',
    symbol: 'P_m',
    unit: 'W',
    value: work.sheet.work('motor', 'motor', shaftPower, {
      T_m: train.motorTorquePeak,
      omega: train.motorSpeed,
    }),
  });
  addFigure(work, {
    key: 'motor.electricalFrequency',
    section: 'motor',
    label: 'Electrical frequency at the output speed',
    symbol: 'f_e',
    unit: 'Hz',
    value:
      p === null
        ? null
        : work.sheet.work('motor', 'motor', electricalFrequency, { p, omega: train.motorSpeed }),
    missing: 'The motor’s pole pairs are not entered.',
  });
  addCheck(work, {
    key: 'motor.power',
    section: 'motor',
    label: 'Motor, power',
    mode: 'heat',
    unit: 'W',
    demandLabel: 'Electrical power at the peak torque and output speed, hot',
    capacityLabel: 'The maker’s greatest power',
    demand: work.sheet.work(
      'motor',
      'motor',
      electricalPower,
      { omega: train.motorSpeed, K_v: motor.warm.speedConstant, I: motor.peak, R: motor.hotResistance },
      'P_el.max',
    ),
    capacity: maxPower,
    required: 1,
    requiredFrom: 'The maker’s figure is itself the limit; common practice, no source',
    missing: 'The motor’s maximum power is not entered.',
    caveat: leftOut(work),
  });
}

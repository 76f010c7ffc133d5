// What the controller itself carries without end against what flows for long.
import { phases } from '@/lib/calc/motor/phases';
import { addCheck, type Work } from '../../work';
import { asCounted, leftOut, type MotorWork } from '../motor/currents';

/** Adds the check of the controller's own rating. */
export function rated(work: Work, motor: MotorWork): void {
  const { duty, drive } = work.design;
  const lasting =
    duty.holdTime.value > 0
      ? work.sheet.work('drive', 'drive', phases.lastingCurrent, { I_h: motor.hold, I_rms: motor.effective })
      : motor.effective;
  const counted = drive.convention === 'dc' ? 'equivalent direct current' : 'peak phase current';
  addCheck(work, {
    key: 'drive.ratedCurrent',
    section: 'drive',
    label: 'Drive, the controller’s own rating',
    mode: 'heat',
    unit: 'A',
    demandLabel: `The greater of hold and effective current (${counted})`,
    capacityLabel: 'Current the controller carries without end',
    demand: asCounted(work, lasting, 'i_q.long'),
    capacity: drive.ratedCurrent,
    required: 1.2,
    requiredFrom:
      'Common practice, no source: ratings are given with more air than an actuator has, and at rest one phase carries the peak',
    missing: 'The controller’s rated motor current is not entered.',
    caveat: leftOut(work),
  });
}

// A motor current limit above what the motor bears.
import { dcFromPhasePeak } from '@/lib/calc/motor/constants';
import { printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const limitAboveMotor: Rule = {
  key: 'limit-above-motor',
  label: 'Current limit above the motor’s maximum',
  class: 'major',
  reason: 'At a stall the drive holds the limit until the winding burns; the magnets may be harmed before.',
  source: 'The maker’s figure; common practice, no source',
  judge: ({ document: { drive, motor } }) => {
    const { motorCurrentLimit: limit, convention } = drive;
    if (limit === null || motor.maxCurrent === null) return [];
    const direct = convention === 'dc' ? limit : dcFromPhasePeak.of({ i_q: limit });
    if (direct <= motor.maxCurrent) return [];
    return [
      {
        at: 'drive.motorCurrentLimit',
        text: `The limit of ${printSI(limit, 'A')} (${printSI(direct, 'A')} of equivalent direct current) is above the motor’s maximum of ${printSI(motor.maxCurrent, 'A')}.`,
        advice: 'Set the limit to the motor’s maximum or below.',
      },
    ];
  },
};

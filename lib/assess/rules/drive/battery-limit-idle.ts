// A battery current limit that the motor current limit keeps from ever acting.
import { dcFromPhasePeak } from '@/lib/calc/motor/constants';
import { printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const batteryLimitIdle: Rule = {
  key: 'battery-limit-idle',
  label: 'Battery limit that never acts',
  class: 'minor',
  reason:
    'The battery current is the motor current times the duty cycle, so that a battery limit above the motor limit protects nothing: often one of the two is not what was meant.',
  source: 'Power balance of a step-down drive',
  judge: ({ design, document }) => {
    const { batteryCurrentLimit: battery, motorCurrentLimit: motor, dutyLimit } = design.drive;
    if (battery === null || motor === null) return [];
    const direct =
      document.drive.convention === 'dc' ? motor.value : dcFromPhasePeak.of({ i_q: motor.value });
    const most = direct * (dutyLimit?.value ?? 1);
    if (battery.value <= most) return [];
    return [
      {
        at: 'drive.batteryCurrentLimit',
        text: `The battery limit of ${printSI(battery.value, 'A')} never acts: the motor limit lets at most ${printSI(most, 'A')} through.`,
        advice: 'Set it to what pack, fuse and leads are meant for, or check the motor limit.',
      },
    ];
  },
};

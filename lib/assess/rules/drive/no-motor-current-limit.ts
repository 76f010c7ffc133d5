// Without a motor current limit the winding's resistance alone limits the torque.
import { printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const noMotorCurrentLimit: Rule = {
  key: 'no-motor-current-limit',
  label: 'Motor current limit not set',
  class: 'critical',
  reason:
    'The motor current limit decides what is forced on the train at stall; a battery current limit hardly does.',
  source: 'Common practice, no source; energy balance at standstill',
  judge: ({ document, drive }) => {
    if (document.drive.motorCurrentLimit !== null) return [];
    const forced =
      drive.forced === null
        ? ''
        : ` Up to ${printSI(drive.forced.value, 'N m')} can then be forced at the output.`;
    return [
      {
        at: 'drive.motorCurrentLimit',
        text: `No motor current limit is entered.${forced}`,
        advice: 'Set the limit just above what the peak torque needs, read it back and enter it.',
      },
    ];
  },
};

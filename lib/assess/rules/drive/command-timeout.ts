// A lost command that the drive notices late or never.
import { printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

/** s; a person takes about as long to react. */
const longest = 0.5;

export const commandTimeout: Rule = {
  key: 'command-timeout',
  label: 'Time until a lost command is noticed',
  class: 'minor',
  reason:
    'Until the time is over the drive goes on with its last command, whatever is chosen for afterwards.',
  source: 'Common practice, no source; IEC 60204-1 on loss of communication (from memory)',
  judge: ({ document: { drive }, design }) => {
    const at = 'drive.commandTimeout';
    const time = design.drive.commandTimeout;
    if (drive.lostCommand === null || drive.lostCommand === 'last') return [];
    if (time === null)
      return [
        {
          at,
          text: 'After what time the drive takes the command for lost is not entered: without one the reaction chosen never comes.',
          advice:
            'Read the time out of the drive, enter it, and show it by pulling the command lead at low power.',
        },
      ];
    if (time.value <= longest) return [];
    const angle = design.duty.outputSpeed.value * time.value;
    return [
      {
        at,
        class: 'major',
        text: `The drive takes a command for lost only after ${printSI(time.value, 'ms')}; at its speed the output has then turned ${printSI(angle, 'deg')}.`,
        advice: 'Shorten the time to a few periods of the command.',
      },
    ];
  },
};

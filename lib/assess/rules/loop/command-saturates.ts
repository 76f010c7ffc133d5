// A command that must be full, or more, for the duty's own speed.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';

export const commandSaturates: Rule = {
  key: 'command-saturates',
  label: 'Speed beyond the command',
  class: 'major',
  reason:
    'At the limit of its command a loop has nothing left to correct with: it falls behind, and a limit on following trips.',
  source: 'Common practice, no source: a tenth kept for control',
  judge: (judged) => {
    const share = figureOf(judged, 'loop.commandForSpeed');
    if (share === null || share <= 1 / 1.1) return [];
    const limited = judged.document.loop.outputLimit !== null && judged.document.loop.outputLimit < 100;
    return [
      {
        at: limited ? 'loop.outputLimit' : 'drive.fullSpeed',
        text: `The duty’s output speed takes ${printSI(share, '%')} of what the command can ask${limited ? ' within its limit' : ''}.`,
        advice: limited
          ? 'Raise the limit of the command, or the motor’s speed at full command, or ask for less speed.'
          : 'Raise the motor’s speed at full command, as far as motor and supply allow, or ask for less speed.',
      },
    ];
  },
};

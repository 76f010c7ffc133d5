// What happens when the command is lost.
import type { Rule } from '../rule';

export const lostCommand: Rule = {
  key: 'lost-command',
  label: 'Lost command',
  class: 'critical',
  reason: 'A link that is lost must end in a stop that was chosen: never in going on with the last command.',
  source: 'IEC 60204-1 on loss of communication (from memory); common practice',
  judge: ({ document: { drive, duty } }) => {
    const at = 'drive.lostCommand';
    const advice = 'Choose a stop that suits the load, and show it by pulling the command lead at low power.';
    switch (drive.lostCommand) {
      case 'last':
        return [{ at, text: 'When the command is lost the drive keeps the last one and goes on.', advice }];
      case null:
        return [
          {
            at,
            class: 'major',
            text: 'What the drive does when the command is lost is not entered.',
            advice,
          },
        ];
      case 'coast':
        if (!duty.gravity) return [];
        return [
          {
            at,
            class: duty.consequence === 'harm' ? 'critical' : 'major',
            text: 'When the command is lost the drive coasts, and gravity brings the arm down.',
            advice: 'Let it brake or hold, fit a brake or prop the arm, and show it at low power.',
          },
        ];
      default:
        return [];
    }
  },
};

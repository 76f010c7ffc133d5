// A stop for a lost command that nothing calls.
import type { Rule } from '../rule';
import { isDescribed, simulatedWords } from './words';

export const noCommandTimeout: Rule = {
  key: 'no-command-timeout',
  label: 'No timeout of the command',
  class: 'major',
  reason:
    'Until a command counts as lost the drive goes on with the last one, whatever stop was chosen for then.',
  source: 'Common practice, no source; IEC 60204-1 on loss of communication (from memory)',
  judge: (judged) => {
    const { lostCommand, commandTimeout } = judged.document.drive;
    const chosen = lostCommand !== null && lostCommand !== 'last';
    if (!chosen || commandTimeout !== null || !isDescribed(judged)) return [];
    return [
      {
        at: 'drive.commandTimeout',
        text: `When a command counts as lost is not entered: the drive is taken to go on with the last one.${simulatedWords(judged, 'commandLost')}`,
        advice:
          'Set the timeout to a few frames of the command, and show it by pulling the command lead in a slow move.',
      },
    ];
  },
};

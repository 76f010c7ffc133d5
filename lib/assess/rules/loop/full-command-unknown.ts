// What full command means to the drive is not entered.
import type { Rule } from '../rule';

export const fullCommandUnknown: Rule = {
  key: 'full-command-unknown',
  label: 'Full command not entered',
  class: 'minor',
  reason:
    'Without it nobody can tell what a gain does: the same number may creep on one setting and leap on another.',
  source: 'Common practice, no source',
  judge: ({ document: { drive } }) => {
    // Whoever knows the drive's lag has begun to describe how it answers.
    if (drive.lag === null) return [];
    const speed = drive.mode === 'speed' && drive.fullSpeed === null;
    const current = drive.mode === 'current' && drive.fullCurrent === null;
    if (!speed && !current) return [];
    return [
      {
        at: speed ? 'drive.fullSpeed' : 'drive.fullCurrent',
        text: `The drive is commanded a ${speed ? 'speed' : 'current'}, and ${speed ? 'the motor’s speed' : 'the motor’s current'} at full command is not entered: the loop is not simulated.`,
        advice: 'Read it from the drive’s settings and enter it.',
      },
    ];
  },
};

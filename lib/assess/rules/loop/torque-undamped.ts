// A position loop that commands a torque without a derivative part.
import type { Rule } from '../rule';

export const torqueUndamped: Rule = {
  key: 'torque-undamped',
  label: 'Torque command without damping',
  class: 'major',
  reason:
    'A torque in proportion to the error is a spring: with nothing to damp it the output swings about its target.',
  source: 'Two integrators in a row have a phase of −180° at every frequency; derived',
  judge: ({ document: { loop, drive } }) => {
    if (drive.mode !== 'current' || loop.kp === null || loop.kp <= 0) return [];
    if (loop.kd !== null && loop.kd > 0) return [];
    return [
      {
        at: 'loop.kd',
        text: `The drive is commanded a current, and the loop has ${loop.kd === null ? 'no derivative gain entered' : 'no derivative gain'}.`,
        advice: 'Add a derivative gain, or command the drive a speed.',
      },
    ];
  },
};

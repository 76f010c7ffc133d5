// A rig whose holding nobody has shown.
import type { Rule } from '../rule';

export const holdingNotShown: Rule = {
  key: 'holding-not-shown',
  label: 'Holding not shown',
  class: 'major',
  reason: 'Clamps creep and slip long before they look loose; only a number or a pull tells.',
  source: 'Common practice, no source',
  judge: ({ document: { rig } }) => {
    if (rig.held === 'nothing' || rig.held === 'hand' || rig.holdTorque !== null) return [];
    return [
      {
        at: 'rig.holdTorque',
        text: 'The torque that the holding takes is not entered: the rig is not assessed.',
        advice: 'Work it out, or pull with a spring balance on a lever about the output axis, and enter it.',
      },
    ];
  },
};

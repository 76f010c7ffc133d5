// A rig whose holding nobody has shown.
import type { Rule } from '../rule';

export const holdingNotShown: Rule = {
  key: 'holding-not-shown',
  label: 'Holding not shown',
  class: 'major',
  reason: 'Clamps creep and slip long before they look loose; only a number or a pull tells.',
  source: 'Common practice, no source',
  judge: ({ document: { rig }, checks }) => {
    if (rig.held === 'nothing' || rig.held === 'hand') return [];
    if ((checks.get('rig.hold')?.capacity ?? null) !== null) return [];
    return [
      {
        at: 'rig.holdTorque',
        text: 'The torque that the holding takes is neither entered nor to be worked out from its clamps: the rig is not assessed.',
        advice:
          'Describe clamps, friction, footing and mass, or pull with a spring balance on a lever about the output axis and enter the torque.',
      },
    ];
  },
};

// Nothing that takes the power away.
import type { Rule } from '../rule';

export const disconnectMissing: Rule = {
  key: 'disconnect-missing',
  label: 'Disconnect missing',
  class: 'critical',
  reason: 'When the drive no longer obeys, only taking its supply away stops the actuator.',
  source: 'Common practice; IEC 60204-1 asks machines for a supply disconnecting device (from memory)',
  judge: ({ document: { supply } }) => {
    const at = 'supply.disconnect';
    const advice = 'Fit a switch or contactor that breaks the greatest working direct current, within reach.';
    switch (supply.disconnect) {
      case 'none':
        return [{ at, text: 'There is no disconnect between source and drive.', advice }];
      case null:
        return [{ at, class: 'major', text: 'How the power is taken away is not entered.', advice }];
      case 'plug':
        return [
          {
            at,
            class: 'minor',
            text: 'The only disconnect is pulling the plug, by hand and near the rig.',
            advice,
          },
        ];
      default:
        return [];
    }
  },
};

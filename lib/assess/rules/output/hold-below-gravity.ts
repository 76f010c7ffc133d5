// A holding torque smaller than what gravity asks.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';

export const holdBelowGravity: Rule = {
  key: 'hold-below-gravity',
  label: 'Holding torque below gravity',
  class: 'major',
  reason:
    'Every check of heat and current rests on the holding torque entered; the arm itself asks for more.',
  source: 'Statics of a level arm',
  judge: (judged) => {
    const asked = figureOf(judged, 'output.gravityTorque');
    const hold = judged.document.duty.holdTorque;
    if (asked === null || hold >= asked) return [];
    return [
      {
        at: 'duty.holdTorque',
        text: `The level arm asks for ${printSI(asked, 'N m')}; the holding torque is entered as ${printSI(hold, 'N m')}.`,
        advice: 'Enter at least what the level arm asks for, or say that gravity does not act.',
      },
    ];
  },
};

// An actuator held by hand.
import { printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const heldByHand: Rule = {
  key: 'held-by-hand',
  label: 'Held by hand',
  class: 'critical',
  reason:
    'The whole output torque acts on the hand that holds the case, without warning and faster than it can let go.',
  source: 'Equilibrium of the whole actuator; common practice',
  judge: ({ document, drive }) => {
    if (document.rig.held !== 'hand') return [];
    const forced =
      drive.forced === null
        ? 'what can be forced is not even known'
        : `${printSI(drive.forced.value, 'N m')} can be forced`;
    return [
      {
        at: 'rig.held',
        text: `The actuator is to be held by hand, and ${forced}.`,
        advice: 'Never hold it by hand: bolt or clamp it down and stand outside the reach.',
      },
    ];
  },
};

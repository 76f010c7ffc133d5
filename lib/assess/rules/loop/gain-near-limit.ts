// A proportional gain near or beyond the limit of stability.
import { printEntered, printNumber } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';

export const gainNearLimit: Rule = {
  key: 'gain-near-limit',
  label: 'Gain near the limit of stability',
  class: 'major',
  reason: 'Beyond the limit the output swings to and fro with growing force until something gives.',
  source: 'Integrator with delay, derived; half of the limit after Ziegler and Nichols (from memory)',
  judge: (judged) => {
    const room = figureOf(judged, 'loop.gainRoom');
    const limit = figureOf(judged, 'loop.ultimateGain');
    const kp = judged.document.loop.kp;
    if (room === null || room >= 2 || kp === null) return [];
    return [
      {
        at: 'loop.kp',
        class: room < 1 ? 'critical' : 'major',
        text: `The proportional gain of ${printEntered(kp)} ${room < 1 ? 'is beyond' : 'is more than half of'} the ${printNumber(limit)} at which the loop is estimated to swing, for its delay and speed.`,
        advice:
          'Start at a quarter of the limit with the load off, and shorten the delay before raising the gain.',
      },
    ];
  },
};

// A motor current limit above what the controller itself carries without end.
import { printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const limitAboveController: Rule = {
  key: 'limit-above-controller',
  label: 'Current limit above the controller’s rating',
  class: 'minor',
  reason: 'A hold at the limit heats the controller until it cuts back by itself, and the load sinks.',
  source: 'The controller’s own rating; common practice, no source',
  judge: ({ document: { drive } }) => {
    const { motorCurrentLimit: limit, ratedCurrent: rated } = drive;
    if (limit === null || rated === null || limit <= rated) return [];
    return [
      {
        at: 'drive.ratedCurrent',
        text: `The motor limit of ${printSI(limit, 'A')} is above the ${printSI(rated, 'A')} that the controller carries without end.`,
        advice: 'Set the limit to the rating, or show how long the controller bears the peak.',
      },
    ];
  },
};

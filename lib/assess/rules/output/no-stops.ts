// No hard stops on an output that can run away.
import type { Rule } from '../rule';

export const noStops: Rule = {
  key: 'no-stops',
  label: 'Hard stops missing',
  class: 'minor',
  reason:
    'When sensor or loop fails, a stop is all that ends the swing before leads, people or the bench do.',
  source: 'Common practice, no source',
  judge: ({ document: { output, duty } }) => {
    // An output that goes round and round has no end to stop at.
    if (output.stops === 'both' || duty.travel >= 360) return [];
    return [
      {
        at: 'output.stops',
        class: duty.consequence === 'harm' ? 'major' : 'minor',
        text:
          output.stops === 'none'
            ? 'The output has no hard stops.'
            : 'The output has a hard stop at one end only.',
        advice: 'Fit stops just outside the travel at both ends, and show what they take.',
      },
    ];
  },
};

// Fewer screws than hold a joint flat.
import { printNumber } from '@/lib/quantity/print';
import type { Rule } from '../rule';
import { joints } from './joints';

export const fewScrews: Rule = {
  key: 'few-screws',
  label: 'Few screws',
  class: 'minor',
  reason:
    'Two screws are a hinge: the joint rocks about their line, and when one works loose nothing is left.',
  source: 'Common practice, no source',
  judge: ({ document }) =>
    joints.flatMap(({ at, key, name }) => {
      const screws = document.case[key];
      if (screws.kind !== 'screws' || screws.count === null || screws.count >= 3) return [];
      return [
        {
          at: `${at}.count`,
          text: `There ${screws.count === 1 ? 'is 1 screw' : `are ${printNumber(screws.count)} screws`} among the ${name}.`,
          advice: 'Take three screws at least, spread round the axis.',
        },
      ];
    }),
};

// Heads that sink into plastic.
import { printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';
import { joints } from './joints';

export const headSinks: Rule = {
  key: 'head-sinks',
  label: 'Heads sink in',
  class: 'minor',
  reason:
    'Plastic that is pressed past its strength flows from under the head, and the preload goes with it.',
  source: 'VDI 2230 Part 1, surface pressure (from memory); limit by common practice',
  judge: ({ checks }) =>
    joints.flatMap(({ at, name }) => {
      const check = checks.get(`${at}.head`);
      if (check?.status !== 'below') return [];
      return [
        {
          at: check.key,
          text: `The heads of the ${name} press with ${printSI(check.demand, 'MPa')} on plastic that bears ${printSI(check.capacity, 'MPa')}.`,
          advice: 'Put washers or a metal plate under the heads, or sleeves round the screws.',
        },
      ];
    }),
};

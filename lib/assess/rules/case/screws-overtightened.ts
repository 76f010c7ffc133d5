// Screws drawn up past their yield.
import { printNumber, printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';
import { joints } from './joints';

export const screwsOvertightened: Rule = {
  key: 'screws-overtightened',
  label: 'Screws stretched',
  class: 'major',
  reason:
    'A screw that has yielded once holds less each time it is tightened, and breaks in the wrench or under the load.',
  source: 'VDI 2230 Part 1, tightening to 90 % of yield (from memory)',
  judge: ({ checks }) =>
    joints.flatMap(({ at, name }) => {
      const worst = ['stress.tightening', 'stress.service']
        .map((key) => checks.get(`${at}.${key}`))
        .find((check) => check?.status === 'below');
      if (worst === undefined || worst.factor === null) return [];
      return [
        {
          at: worst.key,
          text: `The ${name} reach ${printSI(worst.demand, 'MPa')} of a yield of ${printSI(worst.capacity, 'MPa')}: a factor of ${printNumber(worst.factor)}, where ${printNumber(worst.required)} is asked for.`,
          advice: 'Tighten less, or take a larger size or a higher class.',
        },
      ];
    }),
};

// Hard stops nearer than the travel.
import { printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const stopsInsideTravel: Rule = {
  key: 'stops-inside-travel',
  label: 'Stops inside the travel',
  class: 'major',
  reason:
    'The actuator runs against its stops in ordinary work: the train then takes all that the drive can force.',
  source: 'Common practice, no source',
  judge: ({ checks }) => {
    const check = checks.get('output.stops');
    if (check?.status !== 'below') return [];
    return [
      {
        at: 'output.stopTravel',
        text: `The travel is ${printSI(check.demand, 'deg')}, the stops stand ${printSI(check.capacity, 'deg')} apart.`,
        advice: 'Set the stops just outside the travel, or shorten the travel in the loop.',
      },
    ];
  },
};

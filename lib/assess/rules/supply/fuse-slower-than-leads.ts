// A fuse that lets the leads get too hot before it opens, or that a short circuit does not open.
import { printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const fuseSlowerThanLeads: Rule = {
  key: 'fuse-slower-than-leads',
  label: 'Fuse slower than the leads',
  class: 'critical',
  reason:
    'The insulation burns off the leads while the fuse still carries: the fire starts where nobody looks.',
  source: 'IEC 60364-4-43 (from memory): overload and short circuit; time-current bands of the fuse’s kind',
  judge: ({ checks }) => {
    const at = 'supply.fuse';
    const clears = checks.get('supply.fuseClears');
    if (clears?.status === 'below')
      return [
        {
          at,
          text: `A short circuit at the drive draws ${printSI(clears.capacity, 'A')}; the fuse is sure to open within 5 s only from ${printSI(clears.demand, 'A')}.`,
          advice: 'Fit a smaller or quicker fuse, or thicker and shorter leads.',
        },
      ];
    const short = checks.get('supply.fuseShort');
    if (short?.status === 'below')
      return [
        {
          at,
          text: `In a short circuit the fuse may take ${printSI(short.demand, 's')} to open; the insulation stands it for ${printSI(short.capacity, 's')}.`,
          advice: 'Fit a smaller or quicker fuse, or thicker leads.',
        },
      ];
    const overload = checks.get('supply.fuseOverload');
    if (overload?.status !== 'below') return [];
    return [
      {
        at,
        class: 'major',
        text: `The fuse may carry ${printSI(overload.demand, 'A')} for half an hour; the insulation of the leads stands ${printSI(overload.capacity, 'A')} for long.`,
        advice:
          'Fit a smaller fuse, thicker leads or leads for a higher temperature; local codes take precedence.',
      },
    ];
  },
};

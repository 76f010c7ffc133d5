// Leads whose insulation gets too hot on the duty, or at the limit of the bench supply.
import { printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const leadsTooHot: Rule = {
  key: 'leads-too-hot',
  label: 'Leads too hot for their insulation',
  class: 'major',
  reason: 'Insulation that is too hot for long gets brittle and cracks; then the leads touch.',
  source: 'DIN VDE 0298-4, free air; the temperature of the insulation by its kind',
  judge: ({ checks }) => {
    const at = 'supply.leadArea';
    const heat = checks.get('supply.leadHeat');
    if (heat?.status === 'below')
      return [
        {
          at,
          text: `On the duty ${printSI(heat.demand, 'A')} flow in effect; the insulation of the leads stands ${printSI(heat.capacity, 'A')}.`,
          advice: 'Take thicker leads or leads for a higher temperature, and do not bundle or cover them.',
        },
      ];
    const bench = checks.get('supply.benchLeads');
    if (bench?.status !== 'below') return [];
    return [
      {
        at,
        text: `The bench supply holds up to ${printSI(bench.demand, 'A')} into a short circuit; the insulation of the leads stands ${printSI(bench.capacity, 'A')}.`,
        advice: 'Lower its current limit, fit a fuse, or take thicker leads.',
      },
    ];
  },
};

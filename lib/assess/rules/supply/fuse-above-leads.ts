// A fuse larger than what the leads carry lets the leads burn first.
import { printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const fuseAboveLeads: Rule = {
  key: 'fuse-above-leads',
  label: 'Fuse above what the leads carry',
  class: 'critical',
  reason: 'The fuse is there for the leads: if they carry less than it does, they glow before it opens.',
  source:
    'Common practice after electrical codes; lead current from the chassis-wiring column of a public wire table',
  judge: ({ checks, design }) => {
    const check = checks.get('supply.fuseLeads');
    const area = design.supply.leadArea;
    if (check?.status !== 'below' || area === null) return [];
    return [
      {
        at: 'supply.fuse',
        text: `The fuse of ${printSI(check.demand, 'A')} is above the ${printSI(check.capacity, 'A')} that leads of ${printSI(area.value, 'mm^2')} carry for long.`,
        advice: `Fit a fuse of at most ${printSI(check.capacity, 'A')}, or thicker leads; local codes take precedence.`,
      },
    ];
  },
};

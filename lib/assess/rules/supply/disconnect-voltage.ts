// A disconnect that may not break the supply's direct voltage.
import { printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const disconnectVoltage: Rule = {
  key: 'disconnect-voltage',
  label: 'Disconnect below the voltage',
  class: 'major',
  reason:
    'Direct current does not go through zero: contacts opened above their direct voltage draw an arc that stands.',
  source: 'The disconnect’s own rating for direct current; common practice',
  judge: ({ checks, document }) => {
    const { disconnect } = document.supply;
    if (disconnect === null || disconnect === 'none') return [];
    const check = checks.get('supply.disconnectVoltage');
    if (check?.status !== 'below') return [];
    return [
      {
        at: 'supply.disconnectVoltage',
        text: `The disconnect breaks ${printSI(check.capacity, 'V')} of direct voltage; the supply brings ${printSI(check.demand, 'V')} when full.`,
        advice: 'Take a disconnect rated for breaking direct current at the full pack’s voltage.',
      },
    ];
  },
};

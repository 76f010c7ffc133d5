// A fuse that cannot break what the supply brings: its voltage, or the current of a short circuit.
import { printSI } from '@/lib/quantity/print';
import type { RawFinding, Rule } from '../rule';

export const fuseBreaking: Rule = {
  key: 'fuse-breaking',
  label: 'Fuse that may not break',
  class: 'major',
  reason:
    'Above its voltage an arc stands in the opened link, above its breaking current the link bursts: either way the current goes on.',
  source:
    'The fuse’s own ratings for direct current; ISO 8820-3 and IEC 60127 for what such links are tested with',
  judge: ({ checks }) => {
    const found: RawFinding[] = [];
    const voltage = checks.get('supply.fuseVoltage');
    if (voltage?.status === 'below')
      found.push({
        at: 'supply.fuseVoltage',
        class: 'critical',
        text: `The fuse breaks ${printSI(voltage.capacity, 'V')} of direct voltage; the supply brings ${printSI(voltage.demand, 'V')} when full.`,
        advice: 'Fit a fuse for the full pack’s voltage, direct current.',
      });
    const current = checks.get('supply.fuseBreaking');
    if (current?.status === 'below')
      found.push({
        at: 'supply.fuseSpeed',
        text: `A short circuit right behind the fuse draws up to ${printSI(current.demand, 'A')}; such a fuse is sure to break ${printSI(current.capacity, 'A')}.`,
        advice:
          'Fit a fuse whose breaking current covers it, close to the pack, and keep its leads from any short circuit.',
      });
    return found;
  },
};

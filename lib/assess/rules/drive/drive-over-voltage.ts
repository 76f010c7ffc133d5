// A full pack above what the drive bears.
import { printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const driveOverVoltage: Rule = {
  key: 'drive-over-voltage',
  label: 'Supply above the drive’s voltage',
  class: 'critical',
  reason:
    'The drive’s switches fail short above their voltage: then the supply is across the motor or a phase.',
  source: 'The drive’s own limit',
  judge: ({ checks }) => {
    const check = checks.get('drive.maxVoltage');
    if (check?.status !== 'below') return [];
    return [
      {
        at: 'drive.maxVoltage',
        text: `The supply brings ${printSI(check.demand, 'V')} when full; the drive bears ${printSI(check.capacity, 'V')}.`,
        advice: 'Take fewer cells or a drive for a higher voltage; regenerating raises the voltage further.',
      },
    ];
  },
};

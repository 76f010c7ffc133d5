// A drive that stops before the cut-off.
import { printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const driveUnderVoltage: Rule = {
  key: 'drive-under-voltage',
  label: 'Drive stops before the cut-off',
  class: 'major',
  reason: 'A drive that drops out under load lets go of what it holds.',
  source: 'The drive’s own limit',
  judge: ({ checks }) => {
    const check = checks.get('drive.minVoltage');
    if (check?.status !== 'below') return [];
    return [
      {
        at: 'drive.minVoltage',
        text: `At the cut-off and under the peak load the drive is left ${printSI(check.capacity, 'V')}; it needs ${printSI(check.demand, 'V')}.`,
        advice: 'Raise the cut-off, take more cells or a drive for a lower voltage.',
      },
    ];
  },
};

// A rig that slips before the drive's limit is reached.
import { printNumber, printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const holdingTooWeak: Rule = {
  key: 'holding-too-weak',
  label: 'Holding too weak',
  class: 'major',
  reason: 'At a jam or a stop the drive forces all it can, and the rig must outlast it.',
  source: 'Equilibrium of the whole actuator; the factor is common practice, no source',
  judge: ({ checks }) => {
    const check = checks.get('rig.hold');
    if (check?.status !== 'below' || check.factor === null) return [];
    return [
      {
        at: 'rig.holdTorque',
        class: check.factor < 1 ? 'critical' : 'major',
        text: `The holding takes ${printSI(check.capacity, 'N m')}; ${printSI(check.demand, 'N m')} can be forced: a factor of ${printNumber(check.factor)}, where ${printNumber(check.required)} is asked for.`,
        advice: 'Lower the motor current limit for the test, or hold the actuator better.',
      },
    ];
  },
};

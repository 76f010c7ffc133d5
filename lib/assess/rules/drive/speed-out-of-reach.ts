// Torque at speed that the supply does not give.
import { printQuantity, printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const speedOutOfReach: Rule = {
  key: 'speed-out-of-reach',
  label: 'Speed and torque out of reach',
  class: 'major',
  reason:
    'The actuator slows or gives way where the duty asks for torque at speed, most of all on an empty pack.',
  source: 'Linear motor model and energy balance',
  judge: ({ checks, document }) => {
    const check = checks.get('output.speedTorque');
    if (check?.status !== 'below' || check.factor === null) return [];
    return [
      {
        at: 'duty.outputSpeed',
        class: check.factor < 1 ? 'major' : 'minor',
        text: `At ${printQuantity(document.duty.outputSpeed, 'deg/s')} ${printSI(check.capacity, 'N m')} are left at the cut-off; the duty asks for ${printSI(check.demand, 'N m')}.`,
        advice: 'Lower the ratio, raise the voltage or the current limits, or ask for less speed.',
      },
    ];
  },
};

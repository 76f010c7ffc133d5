// A motor turned faster than its maker allows, in service or when it runs free.
import { printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const motorTooFast: Rule = {
  key: 'motor-too-fast',
  label: 'Speed above the maker’s',
  class: 'major',
  reason:
    'Beyond its speed the rotor bursts its bandage or throws its magnets, and the bearings run hot. Loose magnets fly.',
  source: 'The maker’s figure; common practice, no source',
  judge: ({ checks }) => {
    const said = (key: string) => {
      const check = checks.get(key);
      return check?.status === 'below' ? check : null;
    };
    const service = said('motor.speed');
    if (service !== null)
      return [
        {
          at: 'motor.maxSpeed',
          class: 'critical',
          text: `The duty turns the motor at ${printSI(service.demand, 'rpm')}; its maker allows ${printSI(service.capacity, 'rpm')}.`,
          advice: 'Lower the ratio or the speed asked for, or take a motor for this speed.',
        },
      ];
    const free = said('motor.overspeed');
    if (free === null) return [];
    return [
      {
        at: 'motor.maxSpeed',
        text: `Should it lose its load, a full supply can turn the motor at ${printSI(free.demand, 'rpm')}; its maker allows ${printSI(free.capacity, 'rpm')}.`,
        advice:
          'Set a speed or duty limit in the drive, or take a lower voltage; never run the motor uncoupled.',
      },
    ];
  },
};

// Nothing holds the actuator on the bench.
import { printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const heldByNothing: Rule = {
  key: 'held-by-nothing',
  label: 'Nothing holds the rig',
  class: 'critical',
  reason: 'The whole output torque acts on the case as well: what is not held down turns itself over.',
  source: 'Equilibrium of the whole actuator',
  judge: ({ document, drive }) => {
    if (document.rig.held !== 'nothing') return [];
    const forced =
      drive.forced === null ? 'all that drive and supply can force' : printSI(drive.forced.value, 'N m');
    return [
      {
        at: 'rig.held',
        text: `Nothing holds the actuator down; ${forced} can act on it.`,
        advice:
          'Bolt or clamp it to something that takes more than the forced torque, and show by a pull that it holds.',
      },
    ];
  },
};

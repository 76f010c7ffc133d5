// A usual move that the drive cannot brake as hard as its profile asks.
import { printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const moveNotBraked: Rule = {
  key: 'move-not-braked',
  label: 'Usual move not braked',
  class: 'major',
  reason:
    'What the drive may not give back it cannot brake: the load runs on, or comes down faster than asked.',
  source: 'Energy balance of a braking drive',
  judge: ({ checks, document: { supply } }) => {
    const check = checks.get('output.phase.braking');
    if (check?.status !== 'below') return [];
    return [
      {
        at: supply.kind === 'bench' && !supply.benchSinks ? 'supply.benchSinks' : 'drive.regenCurrentLimit',
        text: `At its worst point the usual move must be braked with ${printSI(check.demand, 'N m')}; motor and drive give ${printSI(check.capacity, 'N m')} there, by what may flow back into the supply.`,
        advice:
          'Let more flow back where the supply can take it, fit a brake resistor, or give the move more time.',
      },
    ];
  },
};

// A loaded output that does not reach its target, by the simulation.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';

export const doesNotArrive: Rule = {
  key: 'loop-does-not-arrive',
  label: 'Output does not get to its target',
  class: 'major',
  reason:
    'An actuator that cannot carry its load to the target stands under full current, or creeps while others believe it arrived.',
  source: 'Simulation of this design',
  judge: (judged) => {
    const off = figureOf(judged, 'loop.restError');
    if (off === null || figureOf(judged, 'loop.rise') !== null) return [];
    return [
      {
        at: 'loop.rise',
        text: `In the simulation the loaded output is still ${printSI(Math.abs(off), 'deg')} from the target of a small step at the end of the run.`,
        advice:
          'Look at what holds it back: current limit, limit of the command, a drive tuned for the bare rotor, too little gain.',
      },
    ];
  },
};

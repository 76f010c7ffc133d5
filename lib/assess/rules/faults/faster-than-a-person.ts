// People within reach of an arm that a fault moves before anyone can stop it.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';

export const fasterThanAPerson: Rule = {
  key: 'faster-than-a-person',
  label: 'Faster than a person',
  class: 'major',
  reason:
    'Whoever does not expect it needs the better part of a second to draw a hand back or to press the stop: distance or a screen protects, a button does not.',
  source: 'Reaction of people: common practice, no source; distances after ISO 13855 (from memory)',
  judge: (judged) => {
    const who = judged.document.rig.peopleInReach;
    const time = figureOf(judged, 'faults.tip');
    if (time === null || (who !== 'hands' && who !== 'body')) return [];
    return [
      {
        at: 'rig.peopleInReach',
        class: who === 'body' ? 'critical' : 'major',
        text: `By a fault, from rest and unasked, the tip has moved by 100 mm after ${printSI(time, 's')}, with ${who === 'body' ? 'people' : 'hands'} within its reach.`,
        advice:
          'Keep everybody out of the swing while it has power, and limit current and speed to what a first test needs.',
      },
    ];
  },
};

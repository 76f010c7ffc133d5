// A winding that comes too near its limit in the longest hold.
import { printNumber, printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';

export const windingTooHot: Rule = {
  key: 'winding-too-hot',
  label: 'Winding too hot',
  class: 'major',
  reason:
    'At rest one phase carries up to twice the mean loss and no air moves: holds burn motors that moves do not.',
  source: 'Two first-order thermal nodes, derived; worst phase of sinusoidal currents at rest',
  judge: (judged) => {
    const check = judged.checks.get('motor.winding');
    if (check?.status !== 'below') return [];
    const at = figureOf(judged, 'motor.windingTemperature');
    return [
      {
        at: 'motor.windingLimit',
        text: `The longest hold brings the winding to ${printSI(at, 'degC')}; its limit is ${printNumber(judged.document.motor.windingLimit)} °C, and the room left after moves and rests is to be ${printNumber(check.required)} times what the hold takes.`,
        advice:
          'Shorten the hold, raise the ratio, counterbalance the arm, or take a motor of a higher torque for its loss.',
      },
    ];
  },
};

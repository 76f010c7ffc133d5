// A usual move faster than the output speed entered.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';

export const moveAboveSpeed: Rule = {
  key: 'move-above-speed',
  label: 'Usual move above the output speed',
  class: 'major',
  reason: 'Voltage, energy and wear are judged at the output speed entered; the usual move goes faster.',
  source: 'Kinematics of the move',
  judge: (judged) => {
    const asked = figureOf(judged, 'duty.moveSpeed');
    const stated = judged.design.duty.outputSpeed.value;
    if (asked === null || asked <= stated * (1 + 1e-9)) return [];
    return [
      {
        at: 'duty.outputSpeed',
        text: `The usual move reaches ${printSI(asked, 'deg/s')}; the output speed is entered as ${printSI(stated, 'deg/s')}.`,
        advice: 'Enter the larger speed, or give the move more time.',
      },
    ];
  },
};

// A usual move that motor, drive and supply cannot make in its time.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';

export const moveOutOfReach: Rule = {
  key: 'move-out-of-reach',
  label: 'Usual move out of reach',
  class: 'major',
  reason:
    'The loop asks for more than there is: the output falls behind, runs into its limits and overshoots at the end.',
  source: 'Newton’s law under the limits of motor, drive and supply',
  judge: (judged) => {
    const time = judged.checks.get('output.moveTime.empty');
    const torque = judged.checks.get('output.phase.driving');
    const at = 'duty.moveTime';
    const asked = printSI(judged.design.duty.moveTime.value, 's');
    const advice = 'Give the move more time, or see which limit holds it back on the curve of the move.';
    if (time?.status === 'below') {
      const least = figureOf(judged, 'output.leastTime.empty');
      const text =
        least === null
          ? 'On an emptied supply the load cannot be started, or not be stopped, under the limits entered.'
          : `On an emptied supply the fastest move takes ${printSI(least, 's')}; ${asked} are asked, with a tenth to be kept for control.`;
      return [{ at, text, advice }];
    }
    if (torque?.status !== 'below') return [];
    return [
      {
        at,
        text: `In ${asked} the move asks for ${printSI(torque.demand, 'N m')} at its worst point, where motor and drive give ${printSI(torque.capacity, 'N m')} on an emptied supply.`,
        advice,
      },
    ];
  },
};

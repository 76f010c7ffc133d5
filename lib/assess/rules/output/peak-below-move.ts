// A peak torque smaller than what the usual move asks.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';

export const peakBelowMove: Rule = {
  key: 'peak-below-move',
  label: 'Peak torque below the usual move',
  class: 'major',
  reason:
    'The strength of the train is judged at the peak torque entered; the usual move already asks for more.',
  source: 'Newton’s law and statics of a level arm',
  judge: (judged) => {
    const acceleration = figureOf(judged, 'output.moveTorque');
    if (acceleration === null) return [];
    const gravity = figureOf(judged, 'output.gravityTorque') ?? 0;
    const peak = judged.document.duty.peakTorque;
    if (peak >= acceleration + gravity) return [];
    return [
      {
        at: 'duty.peakTorque',
        text: `The usual move asks for ${printSI(acceleration, 'N m')} to accelerate and ${printSI(gravity, 'N m')} for the arm’s weight; the peak is entered as ${printSI(peak, 'N m')}.`,
        advice: 'Enter the larger peak torque, or give the move more time.',
      },
    ];
  },
};

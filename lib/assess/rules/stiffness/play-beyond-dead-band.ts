// A loop that is asked to hold closer than the train's play.

import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';

export const playBeyondDeadBand: Rule = {
  key: 'play-beyond-dead-band',
  label: 'Play beyond the dead band',
  class: 'minor',
  reason:
    'Inside the play the motor moves and the output does not: a loop on the output that may not rest there hunts from flank to flank.',
  source: 'Describing function of backlash, Gelb and Vander Velde (from memory)',
  judge: (judged) => {
    const { deadBand } = judged.design.loop;
    const play = figureOf(judged, 'train.backlash');
    if (play === null || deadBand === null || judged.document.drive.mode !== 'position') return [];
    // The dead band is a half width, the play a whole one.
    if (play <= 2 * deadBand.value) return [];
    return [
      {
        at: 'loop.deadBand',
        text: `The train has ${printSI(play, 'deg')} of play at the output; the dead band is ${printSI(deadBand.value, 'deg')} either way.`,
        advice:
          'Widen the dead band to half of the play, take play out of the last stages, or preload the output one way.',
      },
    ];
  },
};

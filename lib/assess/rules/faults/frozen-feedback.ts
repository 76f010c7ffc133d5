// A reading that stands still, which nothing in the loop would notice.
import type { Rule } from '../rule';
import { goesOn, simulatedWords } from './words';

export const frozenFeedback: Rule = {
  key: 'frozen-feedback',
  label: 'Frozen reading goes unseen',
  class: 'major',
  reason:
    'A reading that stands still looks like an output that needs more push: the loop gives it all it has.',
  source: 'Common practice, no source; faults to be considered after ISO 13849-2 (from memory)',
  judge: (judged) => {
    if (judged.document.loop.feedbackWatch === 'rate' || !goesOn(judged, 'feedbackFrozen')) return [];
    return [
      {
        at: 'loop.feedbackWatch',
        text: `Nothing in the loop trips when the reading stands still in a move.${simulatedWords(judged, 'feedbackFrozen')}`,
        advice:
          'Let the loop stop when the reading stands still under command, or when it is off by more than a following limit.',
      },
    ];
  },
};

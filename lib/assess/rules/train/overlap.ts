// Helical gears too narrow for their helix to carry over from tooth to tooth.
import { printNumber } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';
import { eachPair } from '../stages';

export const overlap: Rule = {
  key: 'overlap',
  label: 'Overlap ratio',
  class: 'minor',
  reason:
    'With an overlap ratio below 1 in each half the helix never carries a full tooth over to the next: the trouble of printing it is not paid back.',
  source: 'Overlap of 1 or more: common practice in gear handbooks',
  judge: (judged) =>
    eachPair(judged, ({ stage, at, place }) => {
      const ratio = figureOf(judged, `${at}.overlapRatio`);
      if (stage.kind !== 'doubleHelical' || stage.helixAngle === 0 || ratio === null || ratio >= 1)
        return null;
      return {
        at: `${at}.overlapRatio`,
        text: `${place}: each half of the double-helical pair has an overlap ratio of ${printNumber(ratio)}.`,
        advice: 'Take a wider face, a larger helix angle or a smaller module.',
      };
    }),
};

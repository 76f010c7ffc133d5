// A contact ratio near or below 1.
import { toothLimits } from '@/lib/catalog/gears';
import { printNumber } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';
import { eachMesh } from '../stages';

const least = toothLimits.contactRatio.value;

export const contactRatio: Rule = {
  key: 'contact-ratio',
  label: 'Contact ratio',
  class: 'major',
  reason:
    'Below 1 a pair of teeth lets go before the next takes over. Printed teeth are short of their nominal form by a tenth or two, so a ratio of 1.2 on paper can be 1 in the hand.',
  source: toothLimits.contactRatio.source,
  judge: (judged) =>
    eachMesh(judged, ({ at, place }) => {
      const ratio = figureOf(judged, `${at}.contactRatio`);
      if (ratio === null || ratio >= least) return null;
      return {
        at: `${at}.contactRatio`,
        class: ratio < 1 ? 'critical' : 'major',
        text: `${place} has a contact ratio of ${printNumber(ratio)}; it should be ${least} or more.`,
        advice: 'Bring the shafts closer, take more teeth, or take less positive profile shift.',
      };
    }),
};

// The tip of one gear reaching below the involute of the other.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';
import { eachGear } from '../stages';

export const interference: Rule = {
  key: 'interference',
  label: 'Interference of mating teeth',
  class: 'major',
  reason:
    'Where the tip of the mate reaches inside the base circle there is no involute to meet it: it digs into the foot, or the teeth jam.',
  source: 'ISO 21771:2007, start of the active profile (from memory)',
  judge: (judged) =>
    eachGear(judged, ({ gearAt, mate, name }) => {
      const start = figureOf(judged, `${gearAt}.profileStart`);
      if (start === null || start >= 0) return null;
      return {
        at: `${gearAt}.profileStart`,
        text: `${name}: the tip of the ${mate} reaches ${printSI(-start, 'mm')} past the end of its involute.`,
        advice: `Give this gear more positive profile shift, or shorten the tips of the ${mate}.`,
      };
    }),
};

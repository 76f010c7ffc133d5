// Double-helical gears whose gap between the halves is not entered.
import type { Rule } from '../rule';
import { eachPair } from '../stages';

export const apexGap: Rule = {
  key: 'apex-gap',
  label: 'Gap between the halves not entered',
  class: 'minor',
  reason:
    'Where the halves of a double-helical gear meet, teeth are missing or touch first. The whole face width is taken to carry; a gap takes its share of that away.',
  source: 'Common practice, no source',
  judge: (judged) =>
    eachPair(judged, ({ stage, at, place }) => {
      if (stage.kind !== 'doubleHelical' || stage.apexGap !== null) return null;
      return {
        at: `${at}.apexGap`,
        text: `${place}: the gap between the halves is not entered, so the whole face width is taken to carry.`,
        advice: 'Enter the gap; 0 where the teeth run through to the apex.',
      };
    }),
};

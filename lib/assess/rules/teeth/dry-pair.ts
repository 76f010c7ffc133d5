// Two gears of one plastic that run dry on each other.
import type { Rule } from '../rule';
import { eachPair, isMetal } from '../stages';

export const dryPair: Rule = {
  key: 'dry-pair',
  label: 'A plastic dry on itself',
  class: 'minor',
  reason:
    'A plastic running dry on itself has the highest friction of all pairs: it heats, seizes and wears both gears.',
  source: 'Pairs of materials in plastic gear guides: common practice, no source',
  judge: (judged) =>
    eachPair(judged, ({ stage, at, place }) => {
      const { pinion, wheel } = stage;
      if (stage.lubrication !== 'dry' || isMetal(pinion) || pinion.material !== wheel.material) return null;
      return {
        at: `${at}.lubrication`,
        text: `${place} runs dry, with pinion and wheel of the same plastic.`,
        advice: 'Grease it, or make one of the two of another material.',
      };
    }),
};

// Two gears of one plastic that run dry on each other.
import type { Rule } from '../rule';
import { eachMesh, isMetal } from '../stages';

export const dryPair: Rule = {
  key: 'dry-pair',
  label: 'A plastic dry on itself',
  class: 'minor',
  reason:
    'A plastic running dry on itself has the highest friction of all pairs: it heats, seizes and wears both gears.',
  source: 'Pairs of materials in plastic gear guides: common practice, no source',
  judge: (judged) =>
    eachMesh(judged, ({ stageAt, at, place, lubrication, gears: [one, other], words }) => {
      if (lubrication !== 'dry' || isMetal(one) || one.material !== other.material) return null;
      // Both meshes of a set share one lubrication field; a finding stands at one place only.
      const where = at === stageAt ? `${at}.lubrication` : at;
      return {
        at: where,
        text: `${place} runs dry, with ${words} of the same plastic.`,
        advice: 'Grease it, or make one of the two of another material.',
      };
    }),
};

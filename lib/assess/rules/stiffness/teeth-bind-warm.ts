// Teeth whose play warmth takes away.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';

export const teethBindWarm: Rule = {
  key: 'teeth-bind-warm',
  label: 'Teeth bind when warm',
  class: 'major',
  reason:
    'Plastic gears stretch several times as much as a metal case: play that is there on the bench is gone in work, and the mesh then heats itself.',
  source: 'DIN 3967:1978, change of backlash by temperature (from memory)',
  judge: (judged) =>
    judged.train.stages.flatMap(({ at, place }) => {
      const warm = figureOf(judged, `${at}.warmBacklash`);
      const nominal = figureOf(judged, `${at}.play.nominal`);
      if (warm === null || nominal === null || warm >= 0 || nominal < 0) return [];
      return [
        {
          at: `${at}.centreDistance`,
          text: `${place} has play when cold; in the warmth of the case the teeth lack ${printSI(-warm, 'mm')} on the pitch circle.`,
          advice:
            'Move the axes apart, thin the teeth, or make case and gears of materials that stretch alike.',
        },
      ];
    }),
};

// Teeth that bind at one end of their tolerances.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';

export const teethBind: Rule = {
  key: 'teeth-bind',
  label: 'Teeth bind at the end of their tolerances',
  class: 'major',
  reason:
    'Without play both flanks of a tooth are loaded: the mesh heats, swells, and wedges the shafts apart until something breaks.',
  source: 'DIN 3967:1978, least backlash (from memory)',
  judge: (judged) =>
    judged.train.stages.flatMap(({ at, place }) => {
      const least = figureOf(judged, `${at}.play.least`);
      const nominal = figureOf(judged, `${at}.play.nominal`);
      if (least === null || nominal === null || least >= 0 || nominal < 0) return [];
      return [
        {
          at: `${at}.centreTolerance`,
          text: `${place} has ${printSI(nominal, 'deg')} of play at the output as drawn and none at the end of its tolerances.`,
          advice: 'Thin the teeth, move the axes apart, or hold the centre distance more closely.',
        },
      ];
    }),
};

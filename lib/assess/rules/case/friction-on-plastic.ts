// A joint that carries torque by friction on plastic.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';
import { joints } from './joints';

export const frictionOnPlastic: Rule = {
  key: 'friction-on-plastic',
  label: 'Torque held by friction on plastic',
  class: 'minor',
  reason:
    'Plastic under a head creeps: some four tenths of the preload are left after a thousand hours at room temperature, and less when warm.',
  source: 'Rules of printing, preload left after 1000 h, from judgement',
  judge: (judged) =>
    joints.flatMap(({ at, name }) => {
      const slip = judged.checks.get(`${at}.slip`);
      const preload = figureOf(judged, `${at}.preload`);
      const left = figureOf(judged, `${at}.preloadLeft`);
      // Only plastic under the heads has a check of their pressure.
      if (slip === undefined || preload === null || left === null || !judged.checks.has(`${at}.head`))
        return [];
      return [
        {
          at: slip.key,
          class: judged.document.duty.consequence === 'harm' ? 'major' : 'minor',
          text: `The ${name} draw up ${printSI(preload, 'N')} each, of which ${printSI(left, 'N')} can be counted on; only friction on plastic carries the torque.`,
          advice:
            'Set dowels, keys or a step for the torque, put metal under the heads, and retighten after the first day.',
        },
      ];
    }),
};

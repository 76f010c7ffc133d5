// A joint whose friction on plastic holds by what creep usually leaves, and not by the least it may leave.
import { printNumber, printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';
import { joints } from './joints';

export const frictionOnPlastic: Rule = {
  key: 'friction-on-plastic',
  label: 'Torque held by friction on plastic',
  class: 'minor',
  reason:
    'Plastic under a head creeps: some four tenths of the preload are left after a thousand hours at room temperature, down to two tenths, and less when warm.',
  source: 'Rules of printing, preload left after 1000 h, from judgement',
  judge: (judged) =>
    joints.flatMap(({ at, name }) => {
      const slip = judged.checks.get(`${at}.slip`);
      const preload = figureOf(judged, `${at}.preload`);
      const left = figureOf(judged, `${at}.preloadLeft`);
      if (slip?.status !== 'holds' || preload === null || left === null) return [];
      const { holdsFrom, required } = slip;
      if (holdsFrom === null || holdsFrom >= required * judged.document.duty.peakTorque) return [];
      return [
        {
          at: slip.key,
          class: judged.document.duty.consequence === 'harm' ? 'major' : 'minor',
          text: `The ${name} draw up ${printSI(preload, 'N')} each, of which ${printSI(left, 'N')} are counted on. At the low end of what creep leaves, friction holds to ${printSI(holdsFrom, 'N m')} at the output, less than ${printNumber(required)} times the peak.`,
          advice:
            'Set dowels, keys or a step for the torque, put metal under the heads, and retighten after the first day.',
        },
      ];
    }),
};

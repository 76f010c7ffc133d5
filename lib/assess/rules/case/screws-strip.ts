// A thread that strips before its screw has done its work.
import { printNumber, printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';
import { joints } from './joints';

export const screwsStrip: Rule = {
  key: 'screws-strip',
  label: 'Thread strips',
  class: 'major',
  reason: 'A thread in a print strips without warning, often only when the joint is closed the third time.',
  source: 'Pull-out and shear of threads; factors for inserts are common practice, no source',
  judge: (judged) =>
    joints.flatMap(({ at, name }) => {
      const check = judged.checks.get(`${at}.strip`);
      if (check?.status !== 'below' || check.factor === null) return [];
      const torque = figureOf(judged, `${at}.strippingTorque`);
      const told = torque === null ? '' : ` A tightening torque of ${printSI(torque, 'N m')} would strip it.`;
      return [
        {
          at: check.key,
          class: check.factor < 1 ? 'critical' : 'major',
          text: `The ${name} pull with ${printSI(check.demand, 'N')} on a thread that holds ${printSI(check.capacity, 'N')}: a factor of ${printNumber(check.factor)}, where ${printNumber(check.required)} is asked for.${told}`,
          advice: 'Tighten less, engage more thread, or clamp through with a nut.',
        },
      ];
    }),
};

// A centre distance that does not fit the profile shifts.
import { printNumber, printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';
import { eachPair } from '../stages';

/** Rounding of a drawing, in modules: closer than this is taken as meant. */
const rounding = 0.01;
const loose = 0.15;

export const centreDistance: Rule = {
  key: 'centre-distance',
  label: 'Centre distance against the profile shifts',
  class: 'critical',
  reason:
    'Closer than the distance without backlash the teeth bind and the shafts are forced apart; much farther, contact is lost and every reversal strikes.',
  source:
    'ISO 21771:2007, working centre distance (from memory); the limit of 0.15 modules is common practice',
  judge: (judged) =>
    eachPair(judged, ({ stage, at, place }) => {
      const needed = figureOf(judged, `${at}.backlashFreeDistance`);
      if (needed === null)
        return {
          at: `${at}.backlashFreeDistance`,
          text: `${place}: the profile shifts of ${printNumber(stage.pinion.shift)} and ${printNumber(stage.wheel.shift)} allow no mesh at any centre distance.`,
          advice: 'Raise one of the profile shifts.',
        };
      const excess = figureOf(judged, `${at}.centreDistanceExcess`);
      if (excess === null) return null;
      const modules = (excess * 1000) / stage.module;
      const where = { at: `${at}.centreDistance` };
      if (modules < -rounding)
        return {
          ...where,
          text: `${place}: the shafts stand ${printSI(-excess, 'mm')} closer than the ${printSI(needed, 'mm', 5)} that the teeth need without backlash.`,
          advice: `Set the centre distance to ${printSI(needed, 'mm', 5)} and a little more for backlash, or take less profile shift.`,
        };
      if (modules > loose)
        return {
          ...where,
          class: 'major',
          text: `${place}: the shafts stand ${printSI(excess, 'mm')}, ${printNumber(modules, 2)} modules, farther apart than the teeth need.`,
          advice: 'Bring them closer or add profile shift.',
        };
      return null;
    }),
};

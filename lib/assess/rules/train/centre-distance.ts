// A centre distance that does not fit the profile shifts.
import { printNumber, printSI } from '@/lib/quantity/print';
import { figureOf, type RawFinding, type Rule } from '../rule';
import { eachPair, type PairAt } from '../stages';

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
      if (stage.kind === 'internal') return insideRing({ stage, at, place }, excess, needed);
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

/** Inside a ring the teeth bind as the axes part, and gain play as they come closer. */
function insideRing({ stage, at, place }: PairAt, excess: number, needed: number): RawFinding | null {
  const modules = (excess * 1000) / stage.module;
  const where = { at: `${at}.centreDistance` };
  if (modules > rounding)
    return {
      ...where,
      text: `${place}: the shafts stand ${printSI(excess, 'mm')} farther apart than the ${printSI(needed, 'mm', 5)} at which the ring leaves its pinion no play.`,
      advice: `Set the centre distance to ${printSI(needed, 'mm', 5)} and a little less for backlash, or shift the ring outwards.`,
    };
  if (modules < -loose)
    return {
      ...where,
      class: 'major',
      text: `${place}: the shafts stand ${printSI(-excess, 'mm')}, ${printNumber(-modules, 2)} modules, closer than the ring needs.`,
      advice: 'Set them farther apart, or take less profile shift on the ring.',
    };
  return null;
}

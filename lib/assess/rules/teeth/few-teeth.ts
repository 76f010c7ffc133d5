// Plastic gears with very few teeth.
import type { Rule } from '../rule';
import { eachGear, isMetal } from '../stages';

const few = 12;
const tooFew = 8;

export const fewTeeth: Rule = {
  key: 'few-teeth',
  label: 'Few teeth',
  class: 'minor',
  reason:
    'With few teeth the foot is narrow, contact slides far and the bore leaves little rim. Plastic suffers most: it bends and wears.',
  source: 'Common practice, no source: 12 teeth or more for plastic gears under load',
  judge: (judged) =>
    eachGear(judged, ({ gear, gearAt, name }) => {
      if (isMetal(gear) || gear.teeth >= few) return null;
      return {
        at: `${gearAt}.teeth`,
        class: gear.teeth < tooFew ? 'major' : 'minor',
        text: `${name} has ${gear.teeth} teeth of plastic.`,
        advice: `Take ${few} teeth or more, or make this gear of metal.`,
      };
    }),
};

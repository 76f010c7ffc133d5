// Teeth on a body so thin that it bends with them.
import { printNumber } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';
import { eachGear } from '../stages';

export const thinRim: Rule = {
  key: 'thin-rim',
  label: 'Thin body under the teeth',
  class: 'minor',
  reason:
    'A body thinner than about 1.2 tooth depths bends with the teeth: their roots are stressed more, and a very thin one cracks through to the bore. Keyseats and holes for screws make it thinner still.',
  source: 'ISO 6336-3:2006, rim thickness factor (from memory)',
  judge: (judged) =>
    eachGear(judged, ({ gear, gearAt, name }) => {
      const factor = figureOf(judged, `${gearAt}.rimFactor`);
      if (factor === null || factor <= 1) return null;
      const body = gear.rim === null ? 'the body that its joint leaves' : 'the rim';
      return {
        at: `${gearAt}.rimFactor`,
        text: `${name}: ${body} is so thin that the roots bear ${printNumber(factor)} times the stress of a full one.`,
        advice: 'Thicken it: a thinner shaft, more teeth, or the gear one piece with its shaft.',
      };
    }),
};

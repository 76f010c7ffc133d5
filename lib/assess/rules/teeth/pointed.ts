// Teeth that run out to a point.
import { toothLimits } from '@/lib/catalog/gears';
import { printNumber, printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';
import { eachGear } from '../stages';

const least = toothLimits.tipThickness.value;

export const pointed: Rule = {
  key: 'pointed-teeth',
  label: 'Pointed teeth',
  class: 'major',
  reason: 'A thin crest chips off when it meets its mate, and a printer cannot lay it down at all.',
  source: toothLimits.tipThickness.source,
  judge: (judged) =>
    eachGear(judged, ({ module: millimetres, gearAt, name }) => {
      const crest = figureOf(judged, `${gearAt}.tipThickness`);
      const module = millimetres / 1000;
      if (crest === null || crest >= least * module) return null;
      const text =
        crest <= 0
          ? `${name}: the flanks meet below the tip circle, so the tooth has no crest at all.`
          : `${name}: the crest is ${printSI(crest, 'mm')} thick, ${printNumber(crest / module, 2)} modules; it should be ${least} or more.`;
      return {
        at: `${gearAt}.tipThickness`,
        class: crest <= 0 ? 'critical' : 'major',
        text,
        advice: 'Take less positive profile shift on this gear or more teeth.',
      };
    }),
};

// A tip that comes close to the root of its mate, or touches it.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';
import { eachGear } from '../stages';

const least = 0.1;

export const tipClearance: Rule = {
  key: 'tip-clearance',
  label: 'Clearance of the tips',
  class: 'major',
  reason: 'A tip that touches the root of its mate forces the shafts apart and takes away all backlash.',
  source: 'ISO 53:1998 gives 0.25 modules; 0.1 is the least that is common practice',
  judge: (judged) =>
    eachGear(judged, ({ stage, gearAt, side, name }) => {
      const clearance = figureOf(judged, `${gearAt}.tipClearance`);
      if (clearance === null || clearance >= (least * stage.module) / 1000) return null;
      const mate = side === 'pinion' ? 'wheel' : 'pinion';
      return {
        at: `${gearAt}.tipClearance`,
        class: clearance <= 0 ? 'critical' : 'major',
        text:
          clearance <= 0
            ? `${name}: its tips reach ${printSI(-clearance, 'mm')} into the roots of the ${mate}.`
            : `${name}: its tips clear the roots of the ${mate} by only ${printSI(clearance, 'mm')}.`,
        advice: 'Set the shafts farther apart or check the profile shifts.',
      };
    }),
};

// Teeth whose foot the generating rack would cut away.
import { printNumber } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';
import { eachGear } from '../stages';

export const undercut: Rule = {
  key: 'undercut',
  label: 'Undercut teeth',
  class: 'major',
  reason:
    'Undercut thins the foot where bending is greatest and shortens the flank. The form factor used here does not count that loss.',
  source: 'DIN 3960:1987; ISO 21771:2007, least profile shift without undercut (from memory)',
  judge: (judged) =>
    eachGear(judged, ({ gear, gearAt, name }) => {
      const margin = figureOf(judged, `${gearAt}.undercutMargin`);
      if (margin === null || margin >= -1e-9) return null;
      const least = gear.shift - margin;
      return {
        at: `${gearAt}.shift`,
        text: `${name}: ${gear.teeth} teeth with profile shift ${printNumber(gear.shift)} are undercut; they need a shift of ${printNumber(least)} or more.`,
        advice: `Raise the profile shift to ${printNumber(Math.ceil(least * 100 - 1e-9) / 100)} or take more teeth.`,
      };
    }),
};

// Teeth that slide far more than they roll at their feet.
import { slidingLimit } from '@/lib/catalog/gear-steels';
import { printNumber } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';
import { eachGear } from '../stages';

export const specificSliding: Rule = {
  key: 'specific-sliding',
  label: 'Sliding at the foot',
  class: 'minor',
  reason:
    'Where a foot is dragged several times as far as it rolls, it heats, wears and scuffs first. Between pinion and wheel the sliding can be evened out.',
  source: slidingLimit.source,
  judge: (judged) =>
    eachGear(judged, ({ gearAt, name }) => {
      const foot = figureOf(judged, `${gearAt}.slidingFoot`);
      if (foot === null || foot >= -slidingLimit.value) return null;
      return {
        at: `${gearAt}.slidingFoot`,
        text: `${name}: the specific sliding at its foot is ${printNumber(foot)}; ${printNumber(-slidingLimit.value)} is the most it should be.`,
        advice: 'Shift profile from the mate to this gear until both feet slide about alike.',
      };
    }),
};

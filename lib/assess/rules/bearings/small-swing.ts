// A ball bearing that swings by less than the way from one ball to the next.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';
import { describedShafts } from './walk';

export const smallSwing: Rule = {
  key: 'small-swing',
  label: 'Small swing of a ball bearing',
  class: 'minor',
  reason:
    'Where no ball reaches its neighbour’s path, grease is pressed aside and not brought back: the races wear dents at the balls (false brinelling), long before the rating life.',
  source:
    'Harris, Rolling Bearing Analysis, oscillating bearings (from memory); counts of balls estimated low',
  // The figures are worked for drives that turn round only.
  judge: (judged) =>
    describedShafts(judged).flatMap(({ at, place, bearings }) => {
      for (const { at: bearingAt, name } of bearings) {
        const swing = figureOf(judged, `${bearingAt}.swing`);
        const least = figureOf(judged, `${bearingAt}.leastSwing`);
        if (swing === null || least === null || swing >= least) continue;
        return [
          {
            at,
            text: `${place}: ${name} swings ${printSI(swing, 'deg')} either way in the usual move; its balls reach their neighbours’ path from ${printSI(least, 'deg')} on.`,
            advice: 'Let it make a full move now and then, grease it well, or use a plain bush there.',
          },
        ];
      }
      return [];
    }),
};

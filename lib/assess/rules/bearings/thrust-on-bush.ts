// A plain bush that is named to hold its shaft along the axis.
import type { Rule } from '../rule';
import { describedShafts } from './walk';

export const thrustOnBush: Rule = {
  key: 'thrust-on-bush',
  label: 'Thrust on a plain bush',
  class: 'major',
  reason: 'A plain bush lets its shaft slide along. Named as what takes the thrust, it holds nothing.',
  source: 'Common practice, no source',
  judge: (judged) =>
    describedShafts(judged).flatMap(({ shaft, bearings, place }) => {
      const index = shaft.locating === 'a' ? 0 : shaft.locating === 'b' ? 1 : null;
      const named = index === null ? undefined : bearings[index];
      if (named === undefined || named.bearing.kind !== 'bush') return [];
      return [
        {
          at: named.at,
          text: `${place}: ${named.name}, a plain bush, is named to take the thrust.`,
          advice:
            'Name a ball bearing, a shoulder with a washer, or a bush with a collar entered as a washer.',
        },
      ];
    }),
};

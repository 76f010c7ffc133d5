// A shaft whose bearings nobody names.
import type { Rule } from '../rule';
import { eachStage } from '../stages';
import { describedShafts } from './walk';

const advice = 'Say which bearing it is: by its number, by its data, or a plain bush.';

export const bearingUndescribed: Rule = {
  key: 'bearing-undescribed',
  label: 'Bearing not described',
  class: 'major',
  reason:
    'A bearing that is too small dents or wears out, and the gears it holds run out of mesh. What is not assessed has not passed.',
  source: 'House rule: unknown is never a pass',
  judge: (judged) => [
    ...describedShafts(judged).flatMap(({ at, place, bearings }) => {
      const open = bearings.filter(({ bearing }) => bearing.kind === 'unnamed').map(({ name }) => name);
      if (open.length === 0) return [];
      const verb = open.length === 1 ? 'is' : 'are';
      return [{ at, text: `${place}: ${open.join(' and ')} ${verb} not described.`, advice }];
    }),
    ...eachStage(judged, ({ stage, at, place }) =>
      stage.kind === 'planetary' && stage.planetBearing.kind === 'unnamed'
        ? { at: `${at}.planetBearing`, text: `${place}: the bearing of a planet is not described.`, advice }
        : null,
    ),
  ],
};

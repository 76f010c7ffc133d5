// A loop that never stops, however far off it is.
import type { Rule } from '../rule';
import { isDescribed, simulatedWords } from './words';

export const noFollowingLimit: Rule = {
  key: 'no-following-limit',
  label: 'No following limit',
  class: 'major',
  reason:
    'Most of what goes wrong shows first as an output that is not where it should be; a limit on that ends it whatever the cause.',
  source: 'Common practice, no source',
  judge: (judged) =>
    judged.document.loop.followingLimit !== null || !isDescribed(judged)
      ? []
      : [
          {
            at: 'loop.followingLimit',
            text: `The loop does not stop, however far command and reading are apart.${simulatedWords(judged, 'sensorReversed')}`,
            advice:
              'Set a limit a little above the error of the usual move and a time a little above its start, and let the drive stop on it.',
          },
        ],
};

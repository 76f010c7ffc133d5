// Motor and sensor that count opposite ways.
import { oppositeWays } from '../../sections/loop/lacking';
import { simulatedWords } from '../faults/words';
import type { Rule } from '../rule';

export const oppositeWaysRule: Rule = {
  key: 'loop-runs-away',
  label: 'Loop runs away',
  class: 'critical',
  reason:
    'The loop then pushes away from its target with full command until a stop, a fuse or a part ends it.',
  source: 'Positive feedback; common practice, no source',
  judge: (judged) => {
    const { document } = judged;
    const { motorDirection } = document.drive;
    const { polarity } = document.sensor;
    if (motorDirection === null || polarity === null || !oppositeWays({ document })) return [];
    return [
      {
        at: 'sensor.polarity',
        text: `A positive command and a growing reading belong to opposite directions of the output: the loop as entered runs away at the first command.${simulatedWords(judged, 'sensorReversed')}`,
        advice:
          'Turn one of the two round in the settings, and try it first at a few per cent of the command, the load off and the stop within reach.',
      },
    ];
  },
};

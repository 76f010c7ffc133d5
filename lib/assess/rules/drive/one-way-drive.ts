// A positioning actuator whose drive turns one way only.
import { simulatedWords } from '../faults/words';
import type { Rule } from '../rule';

export const oneWayDrive: Rule = {
  key: 'one-way-drive',
  label: 'Drive turns one way only',
  class: 'critical',
  reason: 'A loop that can only push one way cannot come back: the first overshoot runs on to the stop.',
  source: 'Common practice, no source',
  judge: (judged) =>
    judged.document.drive.direction === 'reversing'
      ? []
      : [
          {
            at: 'drive.direction',
            text: `The drive is set to one direction, but a positioning actuator must reverse.${simulatedWords(judged, 'oneWay')}`,
            advice:
              'Set the drive to reversing, and check direction and sensor sign at low current with the load off.',
          },
        ],
};

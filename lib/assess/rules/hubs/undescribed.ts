// A hub of which nobody says what joins it to its shaft.
import { printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';
import { eachHub } from './walk';

export const hubUndescribed: Rule = {
  key: 'hub-undescribed',
  label: 'Hub not described',
  class: 'major',
  reason:
    'All of the torque passes through the joint of every hub, and in printed actuators it is often the joint that gives way first. What is not assessed has not passed.',
  source: 'House rule: unknown is never a pass',
  judge: (judged) =>
    eachHub(judged, ({ hub, at, place, torque }) =>
      hub.kind === 'unnamed'
        ? {
            at,
            text: `${place}: nothing says what joins it to its shaft, and ${printSI(torque, 'N m')} pass through it at the peak.`,
            advice:
              'Say how it is joined, with diameter and length; where it is one piece with its shaft, say that.',
          }
        : null,
    ),
};

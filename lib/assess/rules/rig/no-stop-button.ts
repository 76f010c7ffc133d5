// No stop within the operator's reach.
import type { Rule } from '../rule';

export const noStopButton: Rule = {
  key: 'no-stop-button',
  label: 'No stop within reach',
  class: 'critical',
  reason: 'When the loop runs away, the operator has less than a second and one movement.',
  source: 'ISO 13850 on emergency stops (from memory); common practice',
  judge: ({ document: { rig } }) =>
    rig.stopButton
      ? []
      : [
          {
            at: 'rig.stopButton',
            text: 'There is no stop within the operator’s reach.',
            advice:
              'Fit a latching stop that takes the power away, outside the arm’s swing, and try it before each session.',
          },
        ],
};

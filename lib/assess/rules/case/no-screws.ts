// A joint that nothing holds.
import type { Rule } from '../rule';
import { joints, needed } from './joints';

export const noScrews: Rule = {
  key: 'no-screws',
  label: 'No screws hold the joint',
  class: 'critical',
  reason:
    'The motor turns against its own torque and the case against that of the output: what is not held comes apart at the first jam.',
  source: 'Equilibrium of each part',
  judge: ({ document }) =>
    joints
      .filter((joint) => needed(document, joint) && document.case[joint.key].kind === 'none')
      .map((joint) => ({
        at: joint.at,
        text: `No screws hold ${joint.holds}.`,
        advice: 'Screw the joint, with dowels or a step where it carries torque.',
      })),
};

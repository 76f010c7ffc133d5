// A train whose play or give cannot be told.
import type { Rule } from '../rule';

export const giveNotTold: Rule = {
  key: 'give-not-told',
  label: 'Play or stiffness not told',
  class: 'minor',
  reason:
    'Play and give decide how exactly the output stands, how the loop swings and how hard a stop is struck; none of it is assessed unseen.',
  source: 'House rule: unknown is never a pass',
  judge: ({ figures }) => {
    const words = [
      ['Its play', figures.get('train.backlash')?.missing],
      ['Its play over the tolerances', figures.get('train.backlashGreatest')?.missing],
      ['Its stiffness', figures.get('train.stiffness')?.missing],
    ] as const;
    const open = words.filter(([, missing]) => typeof missing === 'string');
    if (open.length === 0) return [];
    return [
      {
        at: 'train',
        text: `The train is not described in full. ${open.map(([what, missing]) => `${what}: ${missing}`).join(' ')}`,
        advice: 'Enter centre distances with their tolerances, the thinning of the teeth, and the shafts.',
      },
    ];
  },
};

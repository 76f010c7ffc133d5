// A joint whose screws are not described, or not far enough to be assessed.
import type { Check } from '../../assessment';
import type { Judged, Rule } from '../rule';
import { type JointPlace, joints, needed } from './joints';

export const screwsNotDescribed: Rule = {
  key: 'screws-not-described',
  label: 'Screws not described',
  class: 'minor',
  reason: 'What is not assessed has not passed: a joint may slip or strip before any tooth breaks.',
  source: 'House rule: unknown is never a pass',
  judge: (judged) =>
    joints.flatMap((joint) => {
      const lacks = needed(judged.document, joint) ? lackingOf(judged, joint) : null;
      if (lacks === null) return [];
      return [
        {
          at: joint.at,
          class: judged.document.duty.consequence === 'harm' ? 'major' : 'minor',
          text: `The ${joint.name} are not assessed in full. ${lacks}`,
          advice:
            'Enter size, class, number, circle, tightening and thread of the screws, and how the case is made.',
        },
      ];
    }),
};

const named = ['slip', 'parting', 'shear', 'stress.tightening', 'stress.service', 'strip', 'head'];

function lackingOf({ document, checks }: Judged, { at, key }: JointPlace): string | null {
  const { kind } = document.case[key];
  if (kind === 'none') return null;
  if (kind === 'unnamed') return 'The joint is not described.';
  const open = named.map((name) => checks.get(`${at}.${name}`)).find(unassessed);
  return open?.missing ?? null;
}

function unassessed(check: Check | undefined): boolean {
  return check?.status === 'not assessed';
}

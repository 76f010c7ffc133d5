// A shaft of which nobody can tell whether it bears its load.
import type { Rule } from '../rule';
import { shaftsOf } from './walk';

export const shaftNotAssessed: Rule = {
  key: 'shaft-not-assessed',
  label: 'Strength of a shaft not assessed',
  class: 'major',
  reason:
    'A shaft that breaks lets go of everything behind it. What is not assessed has not passed, and its bearings cannot be judged either.',
  source: 'House rule: unknown is never a pass',
  judge: ({ document, checks }) =>
    shaftsOf(document).flatMap(({ at, place }) => {
      const open = ['peak', 'life']
        .map((mode) => checks.get(`${at}.stress.${mode}`))
        .find((check) => check?.status === 'not assessed');
      if (open === undefined) return [];
      const what = open.mode === 'life' ? 'whether it lasts its life' : 'whether it bears its load';
      return [
        {
          at,
          text: `${place}: ${what} is not assessed. ${open.missing ?? ''}`.trim(),
          advice: 'Enter what is missing, or choose a shaft that can be assessed.',
        },
      ];
    }),
};

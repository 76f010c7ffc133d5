// Teeth whose strength could not be assessed at all.
import type { Rule } from '../rule';
import { eachGear } from '../stages';

export const teethNotAssessed: Rule = {
  key: 'teeth-not-assessed',
  label: 'Strength of teeth not assessed',
  class: 'major',
  reason: 'What is not assessed has not passed: the weakest link may be the one that nobody has worked out.',
  source: 'House rule: unknown is never a pass',
  judge: (judged) =>
    eachGear(judged, ({ gearAt, name }) => {
      const check = judged.checks.get(`${gearAt}.root.peak`);
      if (check === undefined || check.status !== 'not assessed') return null;
      return {
        at: check.key,
        text: `${name}: the strength of the tooth root is not assessed. ${check.missing ?? ''}`.trim(),
        advice: 'Enter what is missing, or change the stage so that it can be assessed.',
      };
    }),
};

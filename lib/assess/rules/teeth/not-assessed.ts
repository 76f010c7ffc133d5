// Teeth whose strength could not be assessed at all.
import type { Judged, RawFinding, Rule } from '../rule';
import { eachGear, eachStage } from '../stages';

export const teethNotAssessed: Rule = {
  key: 'teeth-not-assessed',
  label: 'Strength of teeth not assessed',
  class: 'major',
  reason: 'What is not assessed has not passed: the weakest link may be the one that nobody has worked out.',
  source: 'House rule: unknown is never a pass',
  judge: (judged) => [
    ...eachGear(judged, ({ gearAt, name }) =>
      open(judged, `${gearAt}.root.peak`, `${name}: the strength of the tooth root`),
    ),
    ...eachStage(judged, ({ at, place }) =>
      open(judged, `${at}.belt.teeth.life`, `${place}: what the teeth of the belt bear`),
    ),
  ],
};

function open(judged: Judged, key: string, what: string): RawFinding | null {
  const check = judged.checks.get(key);
  if (check === undefined || check.status !== 'not assessed') return null;
  return {
    at: check.key,
    text: `${what} is not assessed. ${check.missing ?? ''}`.trim(),
    advice: 'Enter what is missing, or change the stage so that it can be assessed.',
  };
}

// A belt between a load and a person.
import type { Rule } from '../rule';
import { eachStage } from '../stages';

export const beltLoadPath: Rule = {
  key: 'belt-load-path',
  label: 'Belt in the only load path',
  class: 'major',
  reason:
    'A belt breaks without warning, and jumps teeth at a shock: what is behind it then falls free, whatever the motor or its brake do.',
  source: 'Common practice, cautions of belt makers: never to hold or lift a load by itself',
  judge: (judged) =>
    judged.document.duty.consequence !== 'harm'
      ? []
      : eachStage(judged, ({ stage, at, place }) => {
          if (stage.kind !== 'belt') return null;
          return {
            at: `${at}.profile`,
            text: `A break can hurt someone or drop a load, and all of it hangs on the belt of ${place.toLowerCase()}.`,
            advice:
              'Hold the load behind the belt: a brake, catch or prop at the output, by the rules that apply on site.',
          };
        }),
};

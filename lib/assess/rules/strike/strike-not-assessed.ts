// A stop whose blow cannot be told.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';

export const strikeNotAssessed: Rule = {
  key: 'strike-not-assessed',
  label: 'Strike at the stop not assessed',
  class: 'minor',
  reason: 'A stop without give can break a train that stands any load of the duty.',
  source: 'House rule: unknown is never a pass',
  judge: (judged) => {
    const check = judged.checks.get('strike.peak');
    if (check?.status !== 'not assessed' || judged.document.output.stops === 'none') return [];
    const rigid = figureOf(judged, 'strike.rigidTorque');
    const told =
      rigid === null
        ? ''
        : ` Against a stop that does not give it would be ${printSI(rigid, 'N m')} at the output.`;
    return [
      {
        at: 'output.stopStiffness',
        class: judged.document.duty.consequence === 'harm' ? 'major' : 'minor',
        text: `The strike at the stop is not assessed. ${check.missing ?? ''}${told}`.trim(),
        advice: 'Enter where the stop meets the arm, how stiff it is and how far it gives.',
      },
    ];
  },
};

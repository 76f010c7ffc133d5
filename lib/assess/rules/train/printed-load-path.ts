// A printed train as the only thing between a load and a person.

import { material } from '@/lib/catalog/materials/materials';
import { safetyFactorCaution } from '@/lib/catalog/safety-factors';
import type { Rule } from '../rule';
import { gearsOf, isMetal } from '../stages';

export const printedLoadPath: Rule = {
  key: 'printed-load-path',
  label: 'Printed parts in the only load path',
  class: 'major',
  reason: `${safetyFactorCaution} Prints scatter, creep and age; no factor in this sheet replaces a second path for the load.`,
  source: 'Common practice; caution of the table of required factors',
  judge({ document }) {
    if (document.duty.consequence !== 'harm') return [];
    const stages = document.train.stages.flatMap((stage, i) => {
      const printed = gearsOf(stage).some((g) => !isMetal(g) && material(g.material).process !== 'machined');
      return printed ? [i + 1] : [];
    });
    if (stages.length === 0) return [];
    const which = stages.length === 1 ? `Stage ${stages[0]}` : `Stages ${stages.join(', ')}`;
    return [
      {
        at: 'duty.consequence',
        text: `A break can hurt someone or drop a load, and all of it goes through printed gears. ${which} would let it go.`,
        advice:
          'Add a brake, counterweight, catch or prop that holds the load without the train, and keep people out of its path.',
      },
    ];
  },
};

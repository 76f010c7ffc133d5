// No fuse between the source and the leads.
import { printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const noFuse: Rule = {
  key: 'no-fuse',
  label: 'No fuse',
  class: 'critical',
  reason:
    'A short circuit of a pack is limited by its cells alone: hundreds of amperes until something burns.',
  source: 'Common practice after electrical codes',
  judge: ({ design }) => {
    const { fuse, kind, benchCurrent } = design.supply;
    if (fuse !== null) return [];
    if (kind !== 'bench')
      return [
        {
          at: 'supply.fuse',
          text: 'No fuse is entered between the pack and the leads.',
          advice: 'Fit a fuse at the pack, above the current for long and at most what the leads carry.',
        },
      ];
    return [
      {
        at: 'supply.fuse',
        class: benchCurrent === null ? 'major' : 'minor',
        text:
          benchCurrent === null
            ? 'No fuse is entered, and the bench supply’s current limit is not known.'
            : `No fuse is entered; the bench supply’s limit of ${printSI(benchCurrent.value, 'A')} is all that protects the leads.`,
        advice: 'Fit a fuse, or show that the leads carry the supply’s current limit for long.',
      },
    ];
  },
};

// Packs that burn when they are crushed, shorted, overcharged or emptied too far.
import { cellChemistry } from '@/lib/catalog/cells';
import { printNumber } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';

export const packChemistry: Rule = {
  key: 'pack-chemistry',
  label: 'Pack that can burn',
  class: 'minor',
  reason: 'Crushed, shorted, overcharged or over-discharged, these cells vent and burn; the smoke is toxic.',
  source: 'Public fire-service advice on lithium cells; common practice',
  judge: (judged) => {
    const { kind } = judged.document.supply;
    if (kind === 'bench' || kind === 'lifepo4') return [];
    const stored = figureOf(judged, 'supply.energy');
    const energy = stored === null ? '' : ` holding ${printNumber(stored / 1000)}\u202fkJ`;
    return [
      {
        at: 'supply.kind',
        text: `${cellChemistry(kind).label} pack${energy}: it can burn.`,
        advice:
          'Keep it outside the swing and away from what burns, never charge it unattended, never use a swollen pack, and know the way out.',
      },
    ];
  },
};

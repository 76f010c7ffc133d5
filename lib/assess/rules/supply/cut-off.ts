// Where the discharge of a pack stops.
import { cellChemistry } from '@/lib/catalog/cells';
import { printQuantity } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const cutOff: Rule = {
  key: 'cut-off',
  label: 'Cut-off of the pack',
  class: 'major',
  reason: 'A cell emptied too far is harmed for good and may burn when it is charged again.',
  source: 'Table of cell chemistries; common practice',
  judge: ({ document: { supply } }) => {
    if (supply.kind === 'bench') return [];
    const at = 'supply.cutoff';
    const cell = cellChemistry(supply.kind);
    const [empty, full] = [printQuantity(cell.empty.value, 'V'), printQuantity(cell.full.value, 'V')];
    const advice = `Set a cut-off above ${empty} a cell in the drive, or use an alarm, and enter it.`;
    const cutoff = supply.cutoff;
    if (cutoff === null) return [{ at, text: 'Where the discharge stops is not entered.', advice }];
    if (cutoff < cell.empty.value)
      return [
        {
          at,
          text: `The cut-off of ${printQuantity(cutoff, 'V')} a cell is below the ${empty} at which such cells are harmed.`,
          advice,
        },
      ];
    if (cutoff >= cell.full.value)
      return [
        {
          at,
          text: `The cut-off of ${printQuantity(cutoff, 'V')} a cell is not below the ${full} of a full one.`,
          advice: 'Check the chemistry and the cut-off: one of the two is wrong.',
        },
      ];
    return [];
  },
};

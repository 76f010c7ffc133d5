// Regenerative current above what the pack may be charged with.
import { printQuantity, printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const regenerationAboveCharge: Rule = {
  key: 'regeneration-above-charge',
  label: 'Regeneration above the charge rate',
  class: 'major',
  reason:
    'Regenerating is charging: above the charge rate, or into a full pack, lithium cells are harmed and may burn.',
  source: 'Common practice, no source: one capacity an hour unless the maker’s sheet allows more',
  judge: ({ document: { supply, drive } }) => {
    // A bench supply has its own rule; a pack of unknown capacity is said to be unknown.
    if (supply.kind === 'bench') return [];
    if (drive.regenCurrentLimit === null)
      return [
        {
          at: 'drive.regenCurrentLimit',
          class: 'minor',
          text: 'The regenerative current limit is not entered, so what braking puts back into the pack is not known.',
          advice: 'Set it to the maker’s charge current or below, read it back and enter it.',
        },
      ];
    if (supply.capacity === null) return [];
    const rate = supply.chargeRate ?? 1;
    const allowed = rate * supply.capacity;
    if (drive.regenCurrentLimit <= allowed) return [];
    const told =
      supply.chargeRate === null
        ? 'one capacity an hour'
        : `the ${printQuantity(rate, '1')} capacities an hour that it may be charged with`;
    return [
      {
        at: 'drive.regenCurrentLimit',
        text: `The drive may put ${printSI(drive.regenCurrentLimit, 'A')} back into a pack of ${printQuantity(supply.capacity, 'A h')}, more than ${told}.`,
        advice: `Set the regenerative limit to ${printSI(allowed, 'A')} or to the maker’s charge current, and do not test with a full pack.`,
      },
    ];
  },
};

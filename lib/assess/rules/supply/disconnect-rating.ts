// A disconnect that may not break the working current.
import { printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const disconnectRating: Rule = {
  key: 'disconnect-rating',
  label: 'Disconnect below the current',
  class: 'major',
  reason: 'Contacts opened above their rating arc and may weld: then the power stays on.',
  source: 'Common practice, no source; the rating must be one for breaking direct current',
  judge: ({ checks, document }) => {
    const { disconnect, disconnectRating: rating } = document.supply;
    if (disconnect === null || disconnect === 'none') return [];
    const advice =
      'Take a disconnect whose rating for breaking direct current at this voltage covers what the drive may draw.';
    if (rating === null)
      return [
        { at: 'supply.disconnectRating', text: 'The rating of the disconnect is not entered.', advice },
      ];
    const check = checks.get('supply.disconnect');
    if (check?.status !== 'below') return [];
    return [
      {
        at: 'supply.disconnectRating',
        text: `The disconnect is rated for ${printSI(check.capacity, 'A')}; limits and fuse let the drive draw ${printSI(check.demand, 'A')}.`,
        advice,
      },
    ];
  },
};

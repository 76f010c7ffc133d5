// A stall at the drive's limit that burns the winding before anyone can act.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';

/** Seconds that people need to see a stall and stop it. */
const needed = 10;

export const stallBurnsWinding: Rule = {
  key: 'stall-burns-winding',
  label: 'Stall that burns the winding',
  class: 'major',
  reason:
    'Nothing in the drive may notice a stall: it holds its limit, and one phase carries up to twice the mean loss.',
  source: 'First-order warming of the worst phase, derived; ten seconds are common practice, no source',
  judge: (judged) => {
    const time = figureOf(judged, 'drive.stallTime');
    if (time === null || time >= needed) return [];
    return [
      {
        at: 'drive.stallTime',
        text: `Stalled at the drive’s limit, the winding is at its limit after ${printSI(time, 's')}.`,
        advice:
          'Lower the motor current limit, or let the drive stop by itself when the following error stays large.',
      },
    ];
  },
};

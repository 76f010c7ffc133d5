// The source cannot give the current that the peak asks for.
import { printNumber, printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const sourceCurrent: Rule = {
  key: 'source-current',
  label: 'Source too weak for the peak',
  class: 'major',
  reason:
    'A pack drawn beyond its rating sags, heats and may vent; a bench supply folds back and the drive drops out.',
  source:
    'Maker’s rating; that printed discharge rates are often twice the truth is common practice, no source',
  judge: ({ checks, document }) => {
    const check = checks.get('supply.source');
    if (check?.status !== 'below' || check.factor === null) return [];
    const bench = document.supply.kind === 'bench';
    const tight = check.factor >= 1;
    return [
      {
        at: bench ? 'supply.benchCurrent' : 'supply.dischargeRate',
        class: tight ? 'minor' : 'major',
        text: tight
          ? `The peak takes ${printSI(check.demand, 'A')} from a pack rated for ${printSI(check.capacity, 'A')}: a factor of ${printNumber(check.factor)}, and ratings are claims.`
          : `The peak takes ${printSI(check.demand, 'A')}; the ${bench ? 'bench supply gives' : 'pack is rated for'} ${printSI(check.capacity, 'A')}.`,
        advice: bench
          ? 'Take a stronger supply, or lower the drive’s battery current limit below the supply’s.'
          : 'Take a pack of more capacity or a higher rate, or lower the battery current limit.',
      },
    ];
  },
};

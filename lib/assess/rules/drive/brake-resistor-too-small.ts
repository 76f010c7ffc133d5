// A brake resistor that does not take what flows back.
import { printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const brakeResistorTooSmall: Rule = {
  key: 'brake-resistor-too-small',
  label: 'Brake resistor too small',
  class: 'major',
  reason:
    'What the resistor does not take raises the voltage until the drive trips; one that is overheated burns.',
  source: 'Power balance; the resistor’s own rating',
  judge: ({ checks }) => {
    const peak = checks.get('drive.brakePower');
    if (peak?.status === 'below')
      return [
        {
          at: 'drive.brakeResistor',
          text: `Up to ${printSI(peak.demand, 'W')} flow back; at the trip voltage the resistor takes ${printSI(peak.capacity, 'W')}.`,
          advice: 'Fit a resistor of less resistance that the drive allows, or brake more slowly.',
        },
      ];
    const mean = checks.get('drive.brakeMean');
    if (mean?.status !== 'below') return [];
    return [
      {
        at: 'drive.brakeResistorPower',
        text: `On the mean of moves and rests ${printSI(mean.demand, 'W')} flow back; the resistor bears ${printSI(mean.capacity, 'W')}.`,
        advice: 'Fit a resistor for more power, away from anything that burns, or rest longer.',
      },
    ];
  },
};

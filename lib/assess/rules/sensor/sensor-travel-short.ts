// A sensor that sees less than the output travels.
import { printQuantity, printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const sensorTravelShort: Rule = {
  key: 'sensor-travel-short',
  label: 'Sensor travel below the output’s',
  class: 'critical',
  reason:
    'Beyond its travel a sensor reports nothing or jumps to its other end, and the loop drives the wrong way at full power.',
  source: 'Common practice, no source',
  judge: ({ checks, document }) => {
    const check = checks.get('sensor.travel');
    if (check?.status !== 'below') return [];
    return [
      {
        at: 'sensor.travel',
        text: `The sensor turns through ${printSI(check.demand, 'deg')} for the output’s ${printQuantity(document.duty.travel, 'deg')}; it can report ${printSI(check.capacity, 'deg')}.`,
        advice: 'Lower the sensor’s ratio, take a sensor of more travel, or shorten the travel by stops.',
      },
    ];
  },
};

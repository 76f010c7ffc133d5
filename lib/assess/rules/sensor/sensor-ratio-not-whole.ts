// A sensor geared to an output that goes round, by a ratio that is not whole.
import { printQuantity } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const sensorRatioNotWhole: Rule = {
  key: 'sensor-ratio-not-whole',
  label: 'Sensor ratio not whole',
  class: 'major',
  reason:
    'At one place of the output the sensor reads otherwise in each of its turns: a mark of the sensor is then no mark of the output, and a reference taken from it wanders from turn to turn.',
  source: 'Common practice, no source',
  judge: ({ document }) => {
    const { ratio, turnCount, kind } = document.sensor;
    // A count that is kept knows the turn of the output as well.
    const kept = turnCount === 'kept' || (turnCount === null && kind === 'potentiometer');
    const whole = Math.abs(ratio - Math.round(ratio)) < 1e-6 && ratio >= 1;
    if (kept || whole || document.duty.travel <= 360) return [];
    return [
      {
        at: 'sensor.ratio',
        text: `The output goes through ${printQuantity(document.duty.travel, 'deg')}, and the sensor turns ${printQuantity(ratio, '1')} times for each turn of it.`,
        advice:
          'Take a whole ratio, a sensor that keeps its turns without power, or a reference at the output itself.',
      },
    ];
  },
};

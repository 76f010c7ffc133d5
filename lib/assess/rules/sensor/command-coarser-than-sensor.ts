// Commands in coarser steps than the sensor sees.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';

export const commandCoarserThanSensor: Rule = {
  key: 'command-coarser-than-sensor',
  label: 'Command coarser than the sensor',
  class: 'minor',
  reason: 'Steps of the command come through as jerks, and the sensor’s resolution is paid for in vain.',
  source: 'Common practice, no source',
  judge: (judged) => {
    const command = figureOf(judged, 'loop.commandStep');
    const sensor = figureOf(judged, 'sensor.resolution');
    if (command === null || sensor === null || command <= sensor) return [];
    return [
      {
        at: 'loop.commandBits',
        text: `One step of the command is ${printSI(command, 'deg')} at the output, one of the sensor ${printSI(sensor, 'deg')}.`,
        advice: 'Send the command in finer steps, or let the loop run it as a ramp.',
      },
    ];
  },
};

// A ramp of the command inside the position loop that is slower than the loop.
import { printNumber, printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';

/** Radians that the loop turns on at its crossover while the command ramps from rest to full. */
const slow = 1.5;

export const rampInLoop: Rule = {
  key: 'ramp-in-loop',
  label: 'Ramp slower than the loop',
  class: 'major',
  reason:
    'A limit on how fast the command may change comes too late when the loop wants to brake: the output runs over its target.',
  source: 'Common practice, no source; shown by the simulation of this design',
  judge: (judged) => {
    const ramp = judged.design.loop.rampTime;
    const crossover = figureOf(judged, 'loop.crossover');
    const over = figureOf(judged, 'loop.overshoot');
    if (ramp === null || crossover === null || over === null || over <= 0.2) return [];
    const turned = 2 * Math.PI * crossover * ramp.value;
    if (turned <= slow) return [];
    return [
      {
        at: 'loop.rampTime',
        text: `The command takes ${printSI(ramp.value, 's')} from rest to full, while the loop works at ${printSI(crossover, 'Hz')}: the simulated step runs over by ${printSI(over, '%')}.`,
        advice: `Shorten the ramp below ${printNumber(slow / (2 * Math.PI * crossover))} s and ramp the target instead, or lower the gain.`,
      },
    ];
  },
};

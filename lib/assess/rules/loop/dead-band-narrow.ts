// A dead band narrower than what the sensor can tell apart.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';

export const deadBandNarrow: Rule = {
  key: 'dead-band-narrow',
  label: 'Dead band too narrow',
  class: 'major',
  reason:
    'The loop then hunts to and fro over a step of the sensor or through the backlash, and wears teeth at rest.',
  source: 'Common practice, no source; limit cycles after Gelb and Vander Velde, from memory',
  judge: (judged) => {
    const band = judged.design.loop.deadBand;
    const step = figureOf(judged, 'sensor.resolution');
    const backlash = figureOf(judged, 'sensor.backlash');
    if (band === null || step === null || backlash === null) return [];
    const least = step / 2 + backlash / 2;
    if (band.value >= least) return [];
    return [
      {
        at: 'loop.deadBand',
        text: `The dead band of ±${printSI(band.value, 'deg')} is narrower than half a step of the sensor and half its backlash, ${printSI(least, 'deg')} together.`,
        advice: `Widen it to at least ±${printSI(least, 'deg')}, or take a finer sensor on the output shaft itself.`,
      },
    ];
  },
};

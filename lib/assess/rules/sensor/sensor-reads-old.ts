// Readings that are old by more than the dead band while the output moves.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';

export const sensorReadsOld: Rule = {
  key: 'sensor-reads-old',
  label: 'Readings old',
  class: 'minor',
  reason:
    'The loop steers by where the output was: it passes through its dead band before the reading says so, and turns back.',
  source: 'Common practice, no source: the way during one reading within the dead band',
  judge: (judged) => {
    const band = judged.design.loop.deadBand;
    const step = figureOf(judged, 'sensor.resolution');
    const moved = figureOf(judged, 'sensor.readingLag') ?? figureOf(judged, 'sensor.movedBetween');
    if (band === null || step === null || moved === null) return [];
    // Without a dead band one step of the reading is the narrowest it can aim at.
    if (moved <= Math.max(band.value, step)) return [];
    return [
      {
        at: 'sensor.refreshRate',
        text: `At the output speed the output is ${printSI(moved, 'deg')} ahead of its reading; the dead band is ${printSI(band.value, 'deg')} either way.`,
        advice: 'Read more often, shorten the filter, or slow down before the end of the move.',
      },
    ];
  },
};

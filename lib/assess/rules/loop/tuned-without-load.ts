// Gains found on the bare output, or with another load, for a load that is heavy beside the rotor.
import { printNumber, printSI } from '@/lib/quantity/print';
import type { FindingClass } from '../../assessment';
import { figureOf, type Judged, type Rule } from '../rule';
import { gainsToSet } from './margin-small';

/** From here on the load changes what the loop drives by half and more. */
const heavy = 0.5;
const least = (20 * Math.PI) / 180;
const enough = (45 * Math.PI) / 180;

export const tunedWithoutLoad: Rule = {
  key: 'tuned-without-load',
  label: 'Gains found without the load',
  class: 'major',
  reason:
    'Gains belong to a load: found without it they are too brisk or too weak with it, and gains found with it can ring without.',
  source: 'Common practice, no source; numbers from the frequency response and the simulation of this design',
  judge: (judged) => {
    const { tunedWith } = judged.document.loop;
    if (tunedWith !== 'noLoad' && tunedWith !== 'otherLoad') return [];
    const ratio = figureOf(judged, 'loop.inertiaRatio');
    if (ratio === null || ratio < heavy) return [];
    return [
      {
        at: 'loop.tunedWith',
        class: classOf(judged),
        text: `The gains were found ${tunedWith === 'noLoad' ? 'without load' : 'with another load'}, and the load is ${printNumber(ratio)} times the rotor as the output feels it. ${whatHappens(judged)}`,
        advice: gainsToSet(judged),
      },
    ];
  },
};

/** Minor where the gains suit the load all the same, by margins and simulation. */
function classOf(judged: Judged): FindingClass {
  const phase = figureOf(judged, 'loop.phaseMargin') ?? 0;
  if (phase < least || (figureOf(judged, 'loop.limitCycle') ?? 0) > 0) return 'critical';
  const over = figureOf(judged, 'loop.overshoot');
  const arrives = figureOf(judged, 'loop.rise') !== null;
  return phase >= enough && over !== null && over <= 0.1 && arrives ? 'minor' : 'major';
}

/** With the load against without, by the simulation where there is one. */
function whatHappens(judged: Judged): string {
  const words: string[] = [];
  const [phase, bare] = [figureOf(judged, 'loop.phaseMargin'), figureOf(judged, 'loop.barePhaseMargin')];
  if (phase !== null && bare !== null)
    words.push(
      `The phase margin is ${printSI(phase, 'deg')} with the load and ${printSI(bare, 'deg')} without.`,
    );
  const [over, bareOver] = [figureOf(judged, 'loop.overshoot'), figureOf(judged, 'loop.bare.overshoot')];
  if (over === null || bareOver === null) return words.join(' ');
  const cycle = figureOf(judged, 'loop.limitCycle') ?? 0;
  if (figureOf(judged, 'loop.rise') === null)
    words.push('In the simulation the loaded output does not get to its target.');
  else
    words.push(
      `In the simulation a step runs over by ${printSI(over, '%')} with the load and by ${printSI(bareOver, '%')} without.`,
    );
  if (cycle > 0) words.push(`With the load it goes on swinging by ±${printSI(cycle, 'deg')}.`);
  return words.join(' ');
}

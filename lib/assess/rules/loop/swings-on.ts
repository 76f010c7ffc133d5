// An output that does not come to rest, loaded or on the bench without its load.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Judged, type RawFinding, type Rule } from '../rule';
import { gainsToSet } from './margin-small';

export const swingsOn: Rule = {
  key: 'loop-swings-on',
  label: 'Output does not come to rest',
  class: 'major',
  reason:
    'A swing that goes on hammers the teeth through their play, heats motor and drive at rest, and grows when a part loosens.',
  source: 'Simulation of this design; limit cycles after Gelb and Vander Velde, from memory',
  judge: (judged) => [
    ...found(judged, 'loop.limitCycle', 'loop.limitCycleFrequency', 'with the stated load', 'major'),
    ...found(
      judged,
      'loop.bare.limitCycle',
      'loop.bare.limitCycleFrequency',
      'without load, as at its first run on the bench,',
      'minor',
    ),
  ],
};

function found(
  judged: Judged,
  key: string,
  frequency: string,
  when: string,
  severity: 'major' | 'minor',
): RawFinding[] {
  const cycle = figureOf(judged, key) ?? 0;
  if (cycle <= 0) return [];
  const { outputLimit } = judged.design.loop;
  const hertz = figureOf(judged, frequency);
  const large = cycle > (5 * Math.PI) / 180;
  return [
    {
      at: key,
      class: large ? 'critical' : severity,
      text: `In the simulation the output ${when} goes on swinging by ±${printSI(cycle, 'deg')}${hertz === null ? '' : ` at ${printSI(hertz, 'Hz')}`}${outputLimit !== null && outputLimit.value < 1 ? ', with the command limited as entered' : ''}.`,
      advice: `${gainsToSet(judged)} Less play, a wider dead band and a shorter latency quiet it too.`,
    },
  ];
}

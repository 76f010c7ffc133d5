// Little margin between the loop as it is set and one that swings by itself, with the stated load.
import { printEntered, printNumber, printSI } from '@/lib/quantity/print';
import { figureOf, type Judged, type Rule } from '../rule';

const wanted = { phase: (45 * Math.PI) / 180, gain: 2 } as const;
const least = (20 * Math.PI) / 180;

export const marginSmall: Rule = {
  key: 'loop-margin-small',
  label: 'Loop near its limit of stability',
  class: 'major',
  reason:
    'A loop with little margin rings after every move and swings by itself as soon as the load, the supply or the play changes a little.',
  source: 'Åström and Murray, Feedback Systems: phase margin 30° to 60°, gain margin 2 to 5, from memory',
  judge: (judged) => {
    const phase = figureOf(judged, 'loop.phaseMargin');
    const gain = figureOf(judged, 'loop.gainMargin');
    const kp = judged.document.loop.kp;
    if (phase === null || kp === null) return [];
    if (phase >= wanted.phase && (gain === null || gain >= wanted.gain)) return [];
    return [
      {
        at: 'loop.kp',
        class: phase < least ? 'critical' : 'major',
        text: `With the gains entered (proportional ${printEntered(kp)}) and the stated load the phase margin is ${printSI(phase, 'deg')}${gain === null ? '' : ` and the gain margin ${printNumber(gain)}`}.`,
        advice: gainsToSet(judged),
      },
    ];
  },
};

/** What to set instead: gains that a trial found good, else those that keep the margins. */
export function gainsToSet(judged: Judged): string {
  const named = (prefix: string) => {
    const kp = figureOf(judged, `loop.${prefix}Gain`);
    if (kp === null) return null;
    const ki = figureOf(judged, `loop.${prefix}Integral`) ?? 0;
    const kd = figureOf(judged, `loop.${prefix}Derivative`) ?? 0;
    return `K_p = ${printNumber(kp)}, K_i = ${printNumber(ki)}, K_d = ${printNumber(kd)}`;
  };
  const good = named('suggested');
  if (good !== null)
    return `With this load ${good} keep 45° and a factor of 2.5 and answer a step well in the simulation; approach them from below.`;
  const kept = named('kept');
  return kept === null
    ? 'No gains of this controller keep the usual margins: shorten latency and filters first.'
    : `With this load ${kept} keep 45° and a factor of 2.5; approach them from below.`;
}

// A step that runs far over its target, or over the room that is left before a stop.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Judged, type RawFinding, type Rule } from '../rule';
import { gainsToSet } from './margin-small';

export const overshoots: Rule = {
  key: 'loop-overshoots',
  label: 'Output runs over its target',
  class: 'major',
  reason:
    'What runs over its target meets what stands behind it: a stop, a hand, the edge of a hatch; and it loads the teeth twice.',
  source: 'Simulation of this design; a quarter as limit is common practice, no source',
  judge: (judged) => {
    const over = figureOf(judged, 'loop.overshoot');
    if (over === null) return [];
    return [...far(judged, over), ...ontoStop(judged, over)];
  },
};

function far(judged: Judged, over: number): RawFinding[] {
  if (over <= 0.25) return [];
  return [
    {
      at: 'loop.overshoot',
      text: `In the simulation the loaded output runs over a step of ${printSI(stepOf(judged), 'deg')} by ${printSI(over, '%')}.`,
      advice: gainsToSet(judged),
    },
  ];
}

/** Room between the ends of the travel and the stops, where stops stand at both. */
function ontoStop(judged: Judged, over: number): RawFinding[] {
  const { design } = judged;
  const { stops, stopTravel } = design.output;
  if (stops !== 'both' || stopTravel === null) return [];
  const room = (stopTravel.value - design.duty.travel.value) / 2;
  const past = Math.max(over * stepOf(judged), figureOf(judged, 'loop.rampPast') ?? 0);
  if (room < 0 || past <= room) return [];
  return [
    {
      at: 'output.stopTravel',
      class: design.duty.consequence === 'harm' ? 'critical' : 'major',
      text: `In the simulation the loaded output runs past its target by ${printSI(past, 'deg')}, and behind the end of the travel only ${printSI(room, 'deg')} are left before the stop: a move to the end strikes it.`,
      advice:
        'Set gains that do not overshoot, move the stops apart, or end the commanded travel further inside.',
    },
  ];
}

/** The step that is simulated: the usual move, at most a tenth of the travel. */
function stepOf({ design: { duty } }: Judged): number {
  return Math.min(duty.moveAngle.value, duty.travel.value / 10);
}

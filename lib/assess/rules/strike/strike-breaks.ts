// A blow at the stop that the train does not bear.
import { printNumber, printSI } from '@/lib/quantity/print';
import { figureOf, type Judged, type Rule } from '../rule';

export const strikeBreaks: Rule = {
  key: 'strike-breaks',
  label: 'Strike against the weakest link',
  class: 'major',
  reason:
    'When command or sensor fails, the output runs into its stop at all the speed the drive can give it, and the rotor behind the ratio goes on turning.',
  source: 'Energy balance of a strike; Timoshenko, Strength of Materials (from memory)',
  judge: (judged) => {
    const check = judged.checks.get('strike.peak');
    if (check?.status !== 'below' || check.factor === null || check.demand === null) return [];
    const broken = firstBroken(judged, check.demand);
    return [
      {
        at: check.key,
        class: broken === null ? 'major' : 'critical',
        text:
          broken === null
            ? `A strike at the stop puts ${printSI(check.demand, 'N m')} on the output: a factor of ${printNumber(check.factor)} on what its weakest link holds, where ${printNumber(check.required)} is asked for.`
            : `A strike at the stop puts ${printSI(check.demand, 'N m')} on the output; the ${broken.words} gives way at ${printSI(broken.holds, 'N m')}.`,
        advice: `${buffer(judged)} Or lower the current limit and the speed near the stops.`,
      },
    ];
  },
};

/** The element that gives way first at one overload, if the blow goes so far. */
function firstBroken({ checks }: Judged, blow: number) {
  let found: { words: string; holds: number } | null = null;
  for (const { onLadder, mode, section, holdsTo, label } of checks.values()) {
    if (!onLadder || holdsTo === null || section === 'rig' || (mode !== 'peak' && mode !== 'slip')) continue;
    if (holdsTo >= blow || holdsTo >= (found?.holds ?? Number.POSITIVE_INFINITY)) continue;
    found = { words: `${label.charAt(0).toLowerCase()}${label.slice(1)}`, holds: holdsTo };
  }
  return found;
}

function buffer(judged: Judged): string {
  const travel = figureOf(judged, 'strike.springTravel');
  if (travel !== null) return `Give the stop a spring with ${printSI(travel, 'mm')} of travel.`;
  return 'No spring at the stop is enough by itself: the drive pushes too hard.';
}

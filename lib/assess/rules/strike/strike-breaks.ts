// A blow at the stop that the train does not bear.
import { printNumber, printSI } from '@/lib/quantity/print';
import type { FindingClass } from '../../assessment';
import { figureOf, type Judged, type Rule } from '../rule';

export const strikeBreaks: Rule = {
  key: 'strike-breaks',
  label: 'Strike against the weakest link',
  class: 'major',
  reason:
    'When command or sensor fails, the output runs into its stop at all the speed the drive can give it, or a load falls with the drive dead, and the rotor behind the ratio goes on turning.',
  source: 'Energy balance of a strike; Timoshenko, Strength of Materials (from memory)',
  judge: (judged) => {
    const check = judged.checks.get('strike.peak');
    if (check?.status !== 'below' || check.factor === null || check.demand === null) return [];
    const broken = firstBroken(judged, check.demand);
    const own = figureOf(judged, 'strike.dutyTorque');
    const usual = own === null ? '' : ` At the duty’s own speed it would be ${printSI(own, 'N m')}.`;
    return [
      {
        at: check.key,
        class: classOf(broken !== null, judged.document.duty.consequence === 'harm'),
        text:
          broken === null
            ? `A strike at the stop puts ${printSI(check.demand, 'N m')} on the train: a factor of ${printNumber(check.factor)} on what its weakest link holds, where ${printNumber(check.required)} is asked for.${usual}`
            : `A strike at the stop puts ${printSI(check.demand, 'N m')} on the train, as at the output; the ${broken.words} gives way at ${printSI(broken.holds, 'N m')}.${usual}`,
        advice: `${buffer(judged)} Or lower the current limit and the speed near the stops${judged.document.duty.gravity ? ', and fit a brake that holds the load when the drive is dead' : ''}.`,
      },
    ];
  },
};

/** A strike is a fault, not the duty: it weighs as much as what it would do. */
function classOf(breaks: boolean, hurts: boolean): FindingClass {
  if (breaks) return hurts ? 'critical' : 'major';
  return hurts ? 'major' : 'minor';
}

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
  return 'No spring at the stop is enough by itself: what pushes on is too strong.';
}

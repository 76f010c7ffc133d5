// A drive that can force more on the train than its weakest link holds.
import { printNumber, printSI } from '@/lib/quantity/print';
import type { Check } from '../../assessment';
import { figureOf, type Judged, type RawFinding, type Rule } from '../rule';

export const weakestLink: Rule = {
  key: 'weakest-link',
  label: 'Drive against the weakest link',
  class: 'critical',
  reason:
    'At a stop, a jam or a wrong command the drive gives all the torque its current limit allows, whatever the load asks for. Then the weakest link breaks, and what it held moves freely. A stop met at speed adds the momentum of the rotor, which is not counted here.',
  source: 'Statics of the train at stall, friction not credited; common practice, no source',
  judge(judged) {
    const forced = judged.drive.forced?.value;
    if (forced === undefined) return [];
    const first = least(judged, 1);
    if (first !== null && forced > first.holds) return [breaks(judged, first, forced)];
    const thinnest = least(judged, 'required');
    if (thinnest !== null && forced > thinnest.holds / thinnest.check.required)
      return [thin(judged, thinnest, forced)];
    return [];
  },
};

interface Link {
  readonly check: Check;
  readonly holds: number;
}

/** Of the links that break at one overload (life has no say in a single stall) the one that holds least over a factor. */
function least({ checks }: Judged, over: 1 | 'required'): Link | null {
  let found: Link | null = null;
  let lowest = Number.POSITIVE_INFINITY;
  for (const check of checks.values()) {
    if (check.mode !== 'peak' || !check.onLadder || check.holdsTo === null) continue;
    const torque = check.holdsTo / (over === 1 ? 1 : check.required);
    if (torque >= lowest) continue;
    lowest = torque;
    found = { check, holds: check.holdsTo };
  }
  return found;
}

function breaks(judged: Judged, { check, holds }: Link, forced: number): RawFinding {
  return {
    at: check.key,
    text: `Drive and supply can force ${printSI(forced, 'N m')} at the output; ${named(check)} holds to ${printSI(holds, 'N m')}, shocks included. ${limits(judged, check, holds)}`,
    advice: 'Lower the motor current limit, read it back, and test below it; or strengthen that link.',
  };
}

function thin(judged: Judged, { check, holds }: Link, forced: number): RawFinding {
  return {
    at: check.key,
    class: 'major',
    text: `At stall, with ${printSI(forced, 'N m')} at the output, ${named(check)} keeps less than its required factor of ${printNumber(check.required)}. ${limits(judged, check, holds)}`,
    advice: 'Lower the motor current limit to the second figure, or strengthen that link.',
  };
}

/** The current limits at which the link just holds and keeps its factor, in the drive's own way of counting. */
function limits(judged: Judged, check: Check, holds: number): string {
  const constant = figureOf(judged, 'motor.torqueConstant');
  if (constant === null || constant <= 0) return 'No current limit can be told without the torque constant.';
  const just = holds / (judged.train.ratio.value * constant);
  return `A motor current limit of ${printSI(just, 'A')} would just spare it, ${printSI(just / check.required, 'A')} would keep its required factor of ${printNumber(check.required)}.`;
}

/** The label inside a sentence: `the stage 3 pinion, tooth root,`. */
function named(check: Check): string {
  return `the ${check.label.charAt(0).toLowerCase()}${check.label.slice(1)},`;
}

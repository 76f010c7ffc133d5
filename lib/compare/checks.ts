// Checks of two assessments side by side: factors, and which checks passed their required factor.
import type { Assessment, Check, CheckStatus } from '@/lib/assess/assessment';
import { byRanks, changeOf, differs, size, verdictOf } from './change';
import type { ChangedCheck, Verdict } from './comparison';
import { pairs } from './pairs';

/**
 * Checks whose factor, requirement, limit or status changed, or that came or went. First those that crossed their
 * required factor, then those new and below it, then the weakest link of either side, then by the size of the change.
 */
export function changedChecks(before: Assessment, after: Assessment): ChangedCheck[] {
  const weakest = [before.headline.weakest, after.headline.weakest];
  return pairs(before.checks, after.checks)
    .filter(([was, now]) => was === null || now === null || moved(was, now))
    .map(([was, now]) => changed(was, now))
    .sort(
      byRanks([
        (c) => (c.crossed ? 1 : 0),
        (c) => (c.crossed && c.statusAfter === 'below' ? 1 : 0),
        (c) => (c.statusBefore === null && c.statusAfter === 'below' ? 1 : 0),
        (c) => (weakest.includes(c.key) ? 1 : 0),
        (c) => size(c.relative),
      ]),
    );
}

function moved(was: Check, now: Check): boolean {
  return (
    was.status !== now.status ||
    differs(was.factor, now.factor) ||
    differs(was.required, now.required) ||
    differs(was.holdsTo, now.holdsTo)
  );
}

function changed(was: Check | null, now: Check | null): ChangedCheck {
  const shown = now ?? was;
  if (shown === null) throw new Error('a pair of nothing');
  const factorBefore = was?.factor ?? null;
  const factorAfter = now?.factor ?? null;
  return {
    key: shown.key,
    section: shown.section,
    label: shown.label,
    mode: shown.mode,
    required: shown.required,
    requiredBefore: was?.required ?? null,
    factorBefore,
    factorAfter,
    statusBefore: was?.status ?? null,
    statusAfter: now?.status ?? null,
    holdsToBefore: was?.holdsTo ?? null,
    holdsToAfter: now?.holdsTo ?? null,
    ...changeOf(factorBefore, factorAfter),
    verdict: verdict(was, now),
    crossed: was !== null && now !== null && was.status !== now.status,
  };
}

/** By the margin (factor over required). Where a side has no margin, by what is known about safety. */
function verdict(was: Check | null, now: Check | null): Verdict {
  const from = margin(was);
  const to = margin(now);
  if (from !== null && to !== null) return verdictOf(from, to);
  return verdictOf(standing(was?.status ?? null), standing(now?.status ?? null));
}

function margin(check: Check | null): number | null {
  return check === null || check.factor === null ? null : check.factor / check.required;
}

/** Below or not assessed counts as not shown to hold; an element that is not there cannot fail. */
function standing(status: CheckStatus | null): number {
  return status === 'holds' || status === null ? 1 : 0;
}

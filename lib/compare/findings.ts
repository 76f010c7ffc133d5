// Findings of two assessments side by side: raised, cleared, restated.
import type { Finding, FindingClass } from '@/lib/assess/assessment';
import { byRanks } from './change';
import type { Comparison } from './comparison';
import { pairs } from './pairs';

const weight: Readonly<Record<FindingClass, number>> = { critical: 3, major: 2, minor: 1 };

/** What was raised, cleared, and said in other words or another class; the gravest first. */
export function changedFindings(
  before: readonly Finding[],
  after: readonly Finding[],
): Pick<Comparison, 'raised' | 'cleared' | 'restated'> {
  const raised: Finding[] = [];
  const cleared: Finding[] = [];
  const restated: { before: Finding; after: Finding }[] = [];
  for (const [was, now] of pairs(before, after)) {
    if (was === null && now !== null) raised.push(now);
    else if (was !== null && now === null) cleared.push(was);
    else if (was !== null && now !== null && reworded(was, now)) restated.push({ before: was, after: now });
  }
  const gravest = byRanks<Finding>([(f) => weight[f.class]]);
  return {
    raised: raised.sort(gravest),
    cleared: cleared.sort(gravest),
    restated: restated.sort((a, b) => gravest(a.after, b.after)),
  };
}

function reworded(was: Finding, now: Finding): boolean {
  return was.text !== now.text || was.class !== now.class || was.advice !== now.advice;
}

// How the checks of a section stand, in one line: what falls short first.
import type { Check } from '@/lib/assess/assessment';

/** `1 below, 2 not assessed, 9 hold`; null without checks. */
export function sectionCounts(checks: readonly Check[]): string | null {
  const count = (status: Check['status']) => checks.filter((c) => c.status === status).length;
  const [below, unknown, holds] = [count('below'), count('not assessed'), count('holds')];
  const words = [
    below === 0 ? [] : [`${below} below`],
    unknown === 0 ? [] : [`${unknown} not assessed`],
    holds === 0 ? [] : [holds === 1 ? '1 holds' : `${holds} hold`],
  ].flat();
  return words.length === 0 ? null : words.join(', ');
}

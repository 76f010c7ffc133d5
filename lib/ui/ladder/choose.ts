// Which checks stand on the ladder, in which order, and which are only told of below it.
import type { Check } from '@/lib/assess/assessment';

export interface LadderChoice {
  /** Assessed, rising in the torque they hold. */
  readonly assessed: readonly Check[];
  readonly unknown: readonly Check[];
  /** Assessed ones that hold higher than all that are drawn. */
  readonly higher: readonly Check[];
  readonly moreUnknown: readonly Check[];
}

const most = 14;
const lowest = 12;
const mostUnknown = 6;

/** Chooses what is drawn: all up to 14 rows, else the 12 lowest and at most 6 of the unknown. */
export function chooseRows(checks: readonly Check[]): LadderChoice {
  const ladder = checks.filter((c) => c.onLadder);
  const rising = ladder
    .filter((c) => c.holdsTo !== null)
    .toSorted((a, b) => (a.holdsTo ?? 0) - (b.holdsTo ?? 0));
  const unknown = ladder.filter((c) => c.holdsTo === null);
  if (ladder.length <= most) return { assessed: rising, unknown, higher: [], moreUnknown: [] };
  return {
    assessed: rising.slice(0, lowest),
    unknown: unknown.slice(0, mostUnknown),
    higher: rising.slice(lowest),
    moreUnknown: unknown.slice(mostUnknown),
  };
}

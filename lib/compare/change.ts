// When two numbers differ, by how much, and how a list of changes is put in order.
import type { Verdict } from './comparison';

/** Differences below this share of the larger number are rounding, not change. */
const rounding = 1e-9;

/** Whether two values differ; unknown differs from every number. Symmetric in its arguments. */
export function differs(before: number | null, after: number | null): boolean {
  if (before === null || after === null) return before !== after;
  return Math.abs(after - before) > rounding * Math.max(Math.abs(before), Math.abs(after));
}

/** after − before, and that over |before|; null where a side is unknown, and the share also where before is (all but) 0. */
export function changeOf(
  before: number | null,
  after: number | null,
): { readonly change: number | null; readonly relative: number | null } {
  if (before === null || after === null) return { change: null, relative: null };
  // Equal up to rounding is no change; a literal zero keeps −0 out of the record.
  const change = differs(before, after) ? after - before : 0;
  const relative = change / Math.abs(before);
  return { change, relative: Number.isFinite(relative) ? relative : null };
}

/** More is better: the verdict on a step from one number to the other. */
export function verdictOf(before: number | null, after: number | null): Verdict {
  if (before === null || after === null || !differs(before, after)) return 'neither';
  return after > before ? 'better' : 'worse';
}

/** The opposite verdict. */
export function flipped(verdict: Verdict): Verdict {
  return verdict === 'better' ? 'worse' : verdict === 'worse' ? 'better' : 'neither';
}

/** Compares by several ranks in turn: the first that differs decides, the greater rank first. */
export function byRanks<T>(ranks: readonly ((item: T) => number)[]): (a: T, b: T) => number {
  return (a, b) => {
    for (const rank of ranks) {
      const order = rank(b) - rank(a);
      if (order !== 0) return order;
    }
    return 0;
  };
}

/** How large a change is for ordering; without a share to tell it by, it goes before those that have one. */
export function size(relative: number | null): number {
  return relative === null ? Number.MAX_VALUE : Math.abs(relative);
}

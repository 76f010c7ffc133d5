// The curves of two assessments side by side, and the shares of the error budget.
import { type Assessment, type Curve, errorShares, type Figure } from '@/lib/assess/assessment';
import { pairs } from './pairs';

/** A curve that changed, came or went. */
export interface CurvePair {
  readonly before: Curve | null;
  readonly after: Curve | null;
}

/** Curves whose lines or marks differ, in the order of what came after; what went stands where it stood before. */
export function changedCurves(before: Assessment, after: Assessment): CurvePair[] {
  return pairs(before.curves, after.curves)
    .filter(([was, now]) => drawn(was) !== drawn(now))
    .map(([was, now]) => ({ before: was, after: now }));
}

/** All that shows of a curve: what it is drawn from may change without it. */
function drawn(curve: Curve | null): string {
  if (curve === null) return '';
  const { lines, marks, xUnit, yUnit } = curve;
  return JSON.stringify([xUnit, yUnit, lines, marks.map(({ label, x, y }) => [label, x, y])]);
}

export interface SharePair {
  readonly before: Figure | null;
  readonly after: Figure | null;
}

/** All shares of the error on both sides when one of them differs; empty otherwise. */
export function changedShares(before: Assessment, after: Assessment): SharePair[] {
  const shares = ({ figures }: Assessment) => figures.filter((f) => f.key.startsWith(errorShares));
  const all = pairs(shares(before), shares(after)).map(([was, now]) => ({ before: was, after: now }));
  return all.some((p) => (p.before?.value ?? null) !== (p.after?.value ?? null)) ? all : [];
}

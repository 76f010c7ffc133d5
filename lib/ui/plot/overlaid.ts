// Which lines and marks of two curves belong together, for one plot of both.
import type { Curve, CurveMark, CurvePoint } from '@/lib/assess/assessment';
import type { CurvePair } from '@/lib/compare/curves';

export interface OverlaidLine {
  /** Counted from 1; the same on both sides. */
  readonly number: number;
  readonly nameBefore: string | null;
  readonly nameAfter: string | null;
  readonly before: readonly CurvePoint[] | null;
  readonly after: readonly CurvePoint[] | null;
  /** Nothing about it changed: drawn once. */
  readonly same: boolean;
}

export interface OverlaidMark {
  readonly before: CurveMark | null;
  readonly after: CurveMark | null;
}

/** Whether a mark stands where it stood. */
export function sameMark({ before, after }: OverlaidMark): boolean {
  return before !== null && after !== null && before.x === after.x && before.y === after.y;
}

export interface Overlaid {
  /** A curve for its axes. */
  readonly curve: Curve;
  readonly lines: readonly OverlaidLine[];
  readonly marks: readonly OverlaidMark[];
}

export function overlaid({ before, after }: CurvePair): Overlaid | null {
  const curve = after ?? before;
  if (curve === null) return null;
  const lines = paired(before?.lines ?? [], after?.lines ?? []).map(([was, now], i) => ({
    number: i + 1,
    nameBefore: was?.label ?? null,
    nameAfter: now?.label ?? null,
    before: was?.points ?? null,
    after: now?.points ?? null,
    same: was !== null && now !== null && JSON.stringify(was.points) === JSON.stringify(now.points),
  }));
  const marks = paired(before?.marks ?? [], after?.marks ?? []);
  return { curve, lines, marks: marks.map(([was, now]) => ({ before: was, after: now })) };
}

/** By label; numbers in a label may differ, as in `Drive’s limit, 8 A`. In the order of `after`, what is gone last. */
function paired<T extends { readonly label: string }>(
  before: readonly T[],
  after: readonly T[],
): (readonly [T | null, T | null])[] {
  const left = [...before];
  const take = (fits: (item: T) => boolean): T | null => {
    const at = left.findIndex(fits);
    return at < 0 ? null : (left.splice(at, 1)[0] ?? null);
  };
  const exact = after.map((now) => take((was) => was.label === now.label));
  const both = after.map((now, i): readonly [T | null, T | null] => [
    exact[i] ?? take((was) => worded(was) === worded(now)),
    now,
  ]);
  return [...both, ...left.map((was): readonly [T | null, T | null] => [was, null])];
}

function worded({ label }: { readonly label: string }): string {
  return label.replace(/[\d.,]+/g, '#');
}

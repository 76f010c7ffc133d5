// Places for short labels that stand on their lines: where the line is clear of the others and of their labels.
import type { CurvePoint } from '@/lib/assess/assessment';

const tried = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.12, 0.88, 0.05, 0.95];
/** More room than this, in drawing units, is no better: about a label's length, and half its height. */
const enough = { fromLabels: 30, fromLines: 14 } as const;

/** One place a line, in drawing units; null for a line without points. */
export function placesOnLines(lines: readonly (readonly CurvePoint[])[]): readonly (CurvePoint | null)[] {
  const sampled = lines.map((line) => Array.from({ length: 41 }, (_, i) => along(line, i / 40)));
  const taken: CurvePoint[] = [];
  return lines.map((line, own) => {
    const others = sampled.filter((_, i) => i !== own).flat();
    const roomAt = (at: CurvePoint) =>
      Math.min(enough.fromLabels, nearest(at, taken)) + Math.min(enough.fromLines, nearest(at, others));
    let best: CurvePoint | null = null;
    for (const fraction of tried) {
      const at = along(line, fraction);
      if (at !== null && (best === null || roomAt(at) > roomAt(best) + 1)) best = at;
    }
    if (best !== null) taken.push(best);
    return best;
  });
}

function nearest(at: CurvePoint, others: readonly (CurvePoint | null)[]): number {
  return others.reduce(
    (least, o) => (o === null ? least : Math.min(least, Math.hypot(o.x - at.x, o.y - at.y))),
    Infinity,
  );
}

/** The point at a fraction of a line's length. */
function along(line: readonly CurvePoint[], fraction: number): CurvePoint | null {
  const [first] = line;
  if (first === undefined) return null;
  const lengths = line.map((p, i) => {
    const before = line[i - 1] ?? p;
    return Math.hypot(p.x - before.x, p.y - before.y);
  });
  let left = fraction * lengths.reduce((sum, l) => sum + l, 0);
  for (let i = 1; i < line.length; i++) {
    const [from, to, length] = [line[i - 1] ?? first, line[i] ?? first, lengths[i] ?? 0];
    if (left <= length && length > 0) {
      const part = left / length;
      return { x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) };
    }
    left -= length;
  }
  return line.at(-1) ?? first;
}

// Figures of two assessments side by side.
import type { Figure } from '@/lib/assess/assessment';
import { byRanks, changeOf, differs, flipped, size, verdictOf } from './change';
import type { ChangedFigure, Verdict } from './comparison';
import { pairs } from './pairs';

/** Figures whose value changed, came or went: the headline figures first, then by the size of their change. */
export function changedFigures(before: readonly Figure[], after: readonly Figure[]): ChangedFigure[] {
  const headline = new Set([...before, ...after].filter((f) => f.headline).map((f) => f.key));
  return pairs(before, after)
    .filter(([was, now]) => differs(was?.value ?? null, now?.value ?? null))
    .map(([was, now]) => changed(was, now))
    .sort(byRanks([(f) => (headline.has(f.key) ? 1 : 0), (f) => size(f.relative)]));
}

function changed(was: Figure | null, now: Figure | null): ChangedFigure {
  const shown = now ?? was;
  if (shown === null) throw new Error('a pair of nothing');
  const from = was?.value ?? null;
  const to = now?.value ?? null;
  return {
    key: shown.key,
    section: shown.section,
    label: shown.label,
    unit: shown.unit,
    before: from,
    after: to,
    ...changeOf(from, to),
    better: shown.better,
    verdict: verdict(shown, from, to),
  };
}

function verdict(figure: Figure, from: number | null, to: number | null): Verdict {
  if (figure.better === 'neither') return 'neither';
  const more = verdictOf(from, to);
  return figure.better === 'more' ? more : flipped(more);
}

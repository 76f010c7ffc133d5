// What the folds of a sheet hold that are left off the page until they are opened, by the name of the fold.
import type { ReactNode } from 'react';
import { addresses } from '@/app/_parts/addresses';
import { enteredFold, enteredPart } from '@/app/_parts/entered';
import type { RemarkPin } from '@/lib/ui/checks/remark-pin';
import { ChangedFields, ChecksGained, changedFolds } from '@/lib/ui/compare/changed-since';
import { CurveNumbers } from '@/lib/ui/plot/curve-plot';
import { FoldedPlots, plotGroups } from '@/lib/ui/plot/curve-plots';
import { changedIn, SectionFigures, sectionsOf, type WorkedProps } from './worked-views';

/**
 * Name of the fold in which a row stands.
 * @param of address of the row within the page, as `figure-<key>` or `field-<path>`; or the name of a fold itself
 */
export function foldOf(of: string, { assessment }: Pick<WorkedProps, 'assessment'>): string {
  const [kind, ...rest] = of.split('-');
  const key = rest.join('-');
  if (kind === 'field') return enteredFold(key);
  const figure = kind === 'figure' ? assessment.figures.find((f) => f.key === key) : undefined;
  return figure === undefined ? of : `figures-${figure.section}`;
}

/** The content of a fold; null when the sheet has no such fold. */
export function foldContent(fold: string, pins: readonly RemarkPin[], worked: WorkedProps): ReactNode {
  const { number, revision, assessment, changed } = worked;
  const workedHref = addresses.worked(number, revision.letter);
  for (const section of sectionsOf(assessment)) {
    if (fold === `figures-${section.key}` && section.figures.length > 0)
      return <SectionFigures section={section} workedHref={workedHref} pins={pins} />;
    const plots = plotGroups(section.curves).find((g) => g.id === fold);
    if (plots !== undefined) return <FoldedPlots curves={plots.folded} workedHref={workedHref} />;
  }
  const curve = assessment.curves.find((c) => fold === `numbers-${c.key}`);
  if (curve !== undefined) return <CurveNumbers curve={curve} />;
  if (changed !== null && fold === changedFolds.fields)
    return <ChangedFields letter={revision.letter} {...changed} />;
  if (changed !== null && fold === changedFolds.gained)
    return <ChecksGained letter={revision.letter} {...changed} />;
  return enteredPart({ document: revision.document, fold, pins, changed: changedIn(worked) });
}

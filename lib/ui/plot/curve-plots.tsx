// The curves of a section: the first one in full and the others folded, small, side by side; diagrams along shafts, one a
// shaft, are folded all together.
import type { Curve } from '@/lib/assess/assessment';
import { PartFold } from '../sheet/part-fold';
import { CurvePlot } from './curve-plot';

interface CurvePlotsProps {
  readonly curves: readonly Curve[];
  readonly workedHref?: string | undefined;
  /** Address of the sheet in full where folded curves are left off the page. */
  readonly inFull?: string | undefined;
}

export function CurvePlots({ curves, workedHref, inFull }: CurvePlotsProps) {
  return plotGroups(curves).map(({ id, first, folded }) => (
    <div key={id} className="plots">
      {first === null ? null : <CurvePlot curve={first} workedHref={workedHref} inFull={inFull} />}
      {folded.length === 0 ? null : (
        <PartFold
          id={id}
          summary={foldLine(first, folded)}
          what={folded.map((c) => c.label).join('; ')}
          inFull={inFull}
          open
        >
          <FoldedPlots curves={folded} workedHref={workedHref} />
        </PartFold>
      )}
    </div>
  ));
}

/** What the fold of a group holds. */
export function FoldedPlots({ curves, workedHref }: Omit<CurvePlotsProps, 'inFull'>) {
  return (
    <div className="plots-small">
      {curves.map((curve) => (
        <CurvePlot key={curve.key} curve={curve} workedHref={workedHref} small />
      ))}
    </div>
  );
}

interface PlotGroup {
  /** Name of its fold within the page. */
  readonly id: string;
  /** The one that stands open; null where all are folded. */
  readonly first: Curve | null;
  readonly folded: readonly Curve[];
}

/** The curves of a section together, and its diagrams along shafts together. */
export function plotGroups(curves: readonly Curve[]): readonly PlotGroup[] {
  const [first, ...others] = curves.filter((c) => !isOfShaft(c));
  const shafts = curves.filter(isOfShaft);
  return [
    ...(first === undefined ? [] : [{ id: `plots-${first.key}`, first, folded: others }]),
    ...(shafts[0] === undefined ? [] : [{ id: `plots-${shafts[0].key}`, first: null, folded: shafts }]),
  ];
}

/** Whether a curve is drawn along a shaft, which is then sketched below it. */
export function isOfShaft({ marks }: Curve): boolean {
  return marks.some((m) => m.stands !== undefined);
}

function foldLine(first: Curve | null, folded: readonly Curve[]): string {
  const { length } = folded;
  if (first === null)
    return length === 1
      ? '1 shaft drawn with the moments along it'
      : `${length} shafts drawn with the moments along them`;
  return length > 3 ? `${length} more drawn` : `also drawn: ${folded.map((c) => c.label).join('; ')}`;
}

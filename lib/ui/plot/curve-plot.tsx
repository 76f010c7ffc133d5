// A drawn relation with its key, a summary for the ear, and its numbers in a folded table.
import type { Curve } from '@/lib/assess/assessment';
import { printSI } from '@/lib/quantity/print';
import { unitOf } from '@/lib/quantity/units';
import { Quantity } from '../marks/quantity';
import { PartFold } from '../sheet/part-fold';
import { RuledTable } from '../table/ruled-table';
import { axisWords, CurveDrawing } from './curve-drawing';
import { lineLabel, lineTypes, markLetter, plotLayout } from './layout';

/** How many rows of numbers the folded table shows at most. */
const mostRows = 24;

interface CurvePlotProps {
  readonly curve: Curve;
  /** Address of the worked sheet; what the curve is drawn from then unfolds below it. */
  readonly workedHref?: string | undefined;
  /** One of several alike: drawn in the narrow form whatever the room. */
  readonly small?: boolean | undefined;
  /** Address of the sheet in full where the table of its numbers is left off the page. */
  readonly inFull?: string | undefined;
}

/** Plot of one curve; a curve without points says so. */
export function CurvePlot({ curve, workedHref, small = false, inFull }: CurvePlotProps) {
  if (curve.lines.every((l) => l.points.length === 0))
    return <p className="hush">{curve.label}: not assessed, there is nothing to draw.</p>;
  return (
    <figure className="drawing-figure">
      <figcaption className="label">{curve.label}</figcaption>
      <div role="img" aria-label={summary(curve)}>
        {small ? null : <CurveDrawing curve={curve} layout={plotLayout(curve, 'wide')} form="wide" />}
        <CurveDrawing curve={curve} layout={plotLayout(curve, 'narrow')} form="narrow" alone={small} />
      </div>
      <ul className={small ? 'drawing-key plot-samples' : 'drawing-key plot-samples plot-key'}>
        {curve.lines.map((line, i) => (
          <li key={line.label}>
            <svg className="drawing" viewBox="0 0 40 14" aria-hidden="true" focusable="false">
              <path className={`plot-line plot-line-${i % lineTypes}`} d="M0 7H40" />
            </svg>
            {lineLabel(curve, i)}
          </li>
        ))}
      </ul>
      {curve.marks.length === 0 ? null : (
        <ul className="drawing-key">
          {curve.marks.map((m, i) => (
            <li key={m.label}>
              <b className="warn">+ {markLetter(i)}</b> {m.label}:{' '}
              <Quantity si={settled(m.y, curve)} unit={curve.yUnit} /> at{' '}
              <Quantity si={m.x} unit={curve.xUnit} />
            </li>
          ))}
        </ul>
      )}
      {workedHref === undefined ? null : (
        <p className="hush">
          <a href={workedHref} data-follow={`curve-${curve.key}`}>
            What it is drawn from
          </a>
        </p>
      )}
      {/* The marks of a shaft say what lies between them. */}
      {curve.marks.some((m) => m.stands !== undefined) ? null : (
        <PartFold
          id={`numbers-${curve.key}`}
          summary="the numbers"
          what={`the numbers of “${curve.label}”`}
          inFull={inFull}
        >
          <CurveNumbers curve={curve} />
        </PartFold>
      )}
    </figure>
  );
}

/** What is left of a zero after rounding is a zero. */
function settled(y: number, { lines }: Curve): number {
  const greatest = Math.max(0, ...lines.flatMap((l) => l.points.map((p) => Math.abs(p.y))));
  return Math.abs(y) < 1e-9 * greatest ? 0 : y;
}

/** The points of each line as a table. */
export function CurveNumbers({ curve }: { readonly curve: Curve }) {
  return curve.lines.map((line) => (
    <RuledTable
      key={line.label}
      captionShown
      caption={`${curve.label}: ${line.label}`}
      columns={[
        { label: axisWords(curve.xLabel, unitOf(curve.xUnit).print) },
        { label: curve.yLabel, kind: 'number' },
      ]}
      rows={thinned(line.points).map((p, i) => ({
        key: String(i),
        cells: [
          <Quantity key="x" si={p.x} unit={curve.xUnit} />,
          <Quantity key="y" si={p.y} unit={curve.yUnit} />,
        ],
      }))}
    />
  ));
}

function summary(curve: Curve): string {
  const lines = curve.lines.map((line) => {
    const first = line.points[0];
    const last = line.points.at(-1);
    if (first === undefined || last === undefined) return `${line.label}: no points`;
    const at = (p: typeof first) =>
      `${printSI(settled(p.y, curve), curve.yUnit)} at ${printSI(p.x, curve.xUnit)}`;
    const greatest = line.points.reduce((a, b) => (b.y > a.y ? b : a));
    const between = greatest.y > first.y && greatest.y > last.y ? `, at most ${at(greatest)}` : '';
    return `${line.label}: from ${at(first)} to ${at(last)}${between}`;
  });
  const marks = curve.marks.map(
    (m) => `${m.label}: ${printSI(settled(m.y, curve), curve.yUnit)} at ${printSI(m.x, curve.xUnit)}`,
  );
  return `${curve.label}. ${curve.yLabel} over ${curve.xLabel}. ${[...lines, ...marks].join('; ')}.`;
}

function thinned<T>(points: readonly T[]): readonly T[] {
  const step = Math.max(1, Math.ceil(points.length / mostRows));
  return points.filter((_, i) => i % step === 0 || i === points.length - 1);
}

// A curve of two revisions on one plot: the one before thin and dashed, the one after in full, each line's end lettered.
import type { Curve } from '@/lib/assess/assessment';
import type { CurvePair } from '@/lib/compare/curves';
import { printSI } from '@/lib/quantity/print';
import { Quantity } from '../marks/quantity';
import { PartFold } from '../sheet/part-fold';
import { PlotAxes } from './curve-drawing';
import { CurveNumbers } from './curve-plot';
import { markLetter, type PlotLayout, plotLayout } from './layout';

export interface SidesNamed {
  /** What each side is called in a sentence: `revision B`, `the draft`. */
  readonly names: readonly [before: string, after: string];
  /** What stands at the end of its lines: `B`, `draft`. */
  readonly short: readonly [before: string, after: string];
}

interface CurveOverlayProps extends SidesNamed {
  readonly pair: CurvePair;
  readonly workedHref: string;
  /** Address of the page in full where the numbers are left off. */
  readonly inFull?: string | undefined;
}

export function CurveOverlay({ pair, names, short, workedHref, inFull }: CurveOverlayProps) {
  const curve = pair.after ?? pair.before;
  if (curve === null) return null;
  const overlay = overlayOf(pair, curve, short);
  const { label, key } = curve;
  return (
    <figure className="drawing-figure">
      <figcaption className="label">{label}</figcaption>
      <div role="img" aria-label={summary(pair, label, names)}>
        <OverlayDrawing overlay={overlay} layout={plotLayout(overlay.all, 'narrow', true)} />
      </div>
      <ul className="drawing-key plot-samples">
        {overlay.lines.map((line) => (
          <li key={`${line.side} ${line.number}`}>
            <svg className="drawing" viewBox="0 0 40 14" aria-hidden="true" focusable="false">
              <path className={classOf(line)} d="M0 7H40" />
            </svg>
            {line.end}: {line.name}, {names[line.side]}
          </li>
        ))}
        {overlay.marks.map((m, i) => (
          <li key={m.label}>
            <span>
              <b className="warn">+ {markLetter(i)}</b> {m.label}:{' '}
              {m.before === null ? null : (
                <>
                  <Quantity si={m.before.y} unit={curve.yUnit} /> at{' '}
                  <Quantity si={m.before.x} unit={curve.xUnit} /> in {names[0]} (thin cross);{' '}
                </>
              )}
              <Quantity si={m.y} unit={curve.yUnit} /> at <Quantity si={m.x} unit={curve.xUnit} /> in{' '}
              {names[1]}
            </span>
          </li>
        ))}
      </ul>
      <p className="hush">
        <a href={workedHref} data-follow={`curve-${key}`}>
          What it is drawn from
        </a>
      </p>
      <PartFold
        id={`numbers-${key}`}
        summary="the numbers"
        what={`the numbers of “${label}”`}
        inFull={inFull}
      >
        <OverlayNumbers pair={pair} names={names} />
      </PartFold>
    </figure>
  );
}

/** The points of both sides, a table a line. */
export function OverlayNumbers({
  pair: { before, after },
  names,
}: { readonly pair: CurvePair } & Pick<SidesNamed, 'names'>) {
  return (
    <>
      {before === null ? null : <CurveNumbers curve={{ ...before, label: `${before.label}, ${names[0]}` }} />}
      {after === null ? null : <CurveNumbers curve={{ ...after, label: `${after.label}, ${names[1]}` }} />}
    </>
  );
}

interface OverlayLine {
  readonly side: 0 | 1;
  /** Lines of one name bear one number on both sides. */
  readonly number: number;
  readonly name: string;
  /** What stands at its end. */
  readonly end: string;
}

interface Overlay {
  /** Everything on one pair of axes: lines before, lines after, marks after, marks before. */
  readonly all: Curve;
  readonly lines: readonly OverlayLine[];
  readonly marks: readonly (Curve['marks'][number] & { readonly before: Curve['marks'][number] | null })[];
}

function overlayOf({ before, after }: CurvePair, curve: Curve, short: SidesNamed['short']): Overlay {
  const sides = [before, after] as const;
  const names = [...new Set([...(after?.lines ?? []), ...(before?.lines ?? [])].map((l) => l.label))];
  const lines = ([0, 1] as const).flatMap((side) =>
    (sides[side]?.lines ?? []).map((line) => {
      const number = names.indexOf(line.label);
      const end = names.length === 1 ? short[side] : `${number + 1} ${short[side]}`;
      return { side, number, name: line.label, end, points: line.points };
    }),
  );
  const was = new Map(before?.marks.map((m) => [m.label, m]));
  const marks = (after?.marks ?? []).map((m) => ({ ...m, before: was.get(m.label) ?? null }));
  const beforeMarks = before?.marks ?? [];
  return {
    all: {
      ...curve,
      lines: lines.map(({ end, points }) => ({ label: end, points })),
      marks: [...marks, ...beforeMarks],
    },
    lines,
    marks,
  };
}

function classOf({ side, number }: OverlayLine): string {
  return side === 0 ? 'plot-line plot-line-before' : `plot-line plot-line-after plot-line-${number % 5}`;
}

function OverlayDrawing({ overlay, layout: l }: { readonly overlay: Overlay; readonly layout: PlotLayout }) {
  return (
    <svg
      className="drawing plot form-alone"
      viewBox={`0 0 ${l.width} ${l.height}`}
      aria-hidden="true"
      focusable="false"
    >
      <PlotAxes curve={overlay.all} layout={l} />
      {overlay.lines.map((line, i) => (
        <g key={line.end}>
          <path className={classOf(line)} d={l.lines[i]?.path ?? ''} />
          <text
            className={line.side === 0 ? 'text-second' : 'plot-text'}
            x={l.lines[i]?.label.x}
            y={l.lines[i]?.label.y}
          >
            {line.end}
          </text>
        </g>
      ))}
      {l.marks.map((m, i) =>
        i < overlay.marks.length ? (
          <g key={m.label.text}>
            <path className="plot-mark" d={`M${m.x - 6} ${m.y}h12M${m.x} ${m.y - 6}v12`} />
            <text className="plot-mark-text plot-halo" x={m.label.x} y={m.label.y} textAnchor="middle">
              {m.label.text}
            </text>
          </g>
        ) : (
          <path
            key={m.label.text}
            className="plot-mark-before"
            d={`M${m.x - 5} ${m.y - 5}l10 10m0-10l-10 10`}
          />
        ),
      )}
    </svg>
  );
}

function summary({ before, after }: CurvePair, label: string, [was, now]: SidesNamed['names']): string {
  if (before === null) return `${label}: only in ${now}. ${extremes(after, now)}`;
  if (after === null) return `${label}: only in ${was}. ${extremes(before, was)}`;
  return `${label}, ${was} beside ${now}. ${extremes(before, was)} ${extremes(after, now)}`;
}

function extremes(curve: Curve | null, name: string): string {
  if (curve === null) return '';
  const lines = curve.lines.flatMap((line) => {
    const last = line.points.at(-1);
    if (last === undefined) return [];
    const greatest = line.points.reduce((a, b) => (b.y > a.y ? b : a));
    const at = (p: typeof last) => `${printSI(p.y, curve.yUnit)} at ${printSI(p.x, curve.xUnit)}`;
    return [`${line.label} at most ${at(greatest)}, at the end ${at(last)}`];
  });
  return `In ${name}: ${lines.join('; ')}.`;
}

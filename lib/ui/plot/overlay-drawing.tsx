// A curve of two revisions as one SVG: lines before thin and dashed, lines after in full, a number and a letter on each.
import type { Curve, CurvePoint } from '@/lib/assess/assessment';
import { PlotAxes } from './curve-drawing';
import { lineTypes, markLetter, plotLayout } from './layout';
import { placesOnLines } from './on-lines';
import { type Overlaid, sameMark } from './overlaid';

interface OverlayDrawingProps {
  readonly of: Overlaid;
  /** What stands on the lines of each side: `B`, `C`. */
  readonly short: readonly [before: string, after: string];
}

/** Hidden from the ear, which gets the summary and the tables. */
export function OverlayDrawing({ of, short }: OverlayDrawingProps) {
  const strokes = strokesOf(of, short);
  const nowMarks = of.marks.map((m) => m.after).filter((m) => m !== null);
  const wasMarks = of.marks
    .filter((m) => !sameMark(m))
    .map((m) => m.before)
    .filter((m) => m !== null);
  const all: Curve = {
    ...of.curve,
    lines: strokes.map(({ label, points }) => ({ label, points })),
    marks: [...nowMarks, ...wasMarks],
  };
  const l = plotLayout(all, 'narrow');
  const places = placesOnLines(l.lines.map((line) => line.points));
  return (
    <svg
      className="drawing plot form-alone"
      viewBox={`0 0 ${l.width} ${l.height}`}
      aria-hidden="true"
      focusable="false"
    >
      <PlotAxes curve={of.curve} layout={l} />
      {strokes.map(({ label, className }, i) => (
        <path key={label} className={className} d={l.lines[i]?.path ?? ''} />
      ))}
      {strokes.map(({ label, side }, i) => {
        const place = places[i];
        return place == null ? null : (
          <text
            key={label}
            className={
              side === 'before' ? 'plot-on-line plot-on-line-before plot-halo' : 'plot-on-line plot-halo'
            }
            x={place.x.toFixed(1)}
            y={(place.y + 4).toFixed(1)}
          >
            {label}
          </text>
        );
      })}
      {l.marks.map((m, i) =>
        i < nowMarks.length ? (
          <g key={m.label.text}>
            <path className="plot-mark" d={`M${m.x - 6} ${m.y}h12M${m.x} ${m.y - 6}v12`} />
            <text className="plot-mark-text plot-halo" x={m.label.x} y={m.label.y} textAnchor="middle">
              {markLetter(i)}
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

interface Stroke {
  readonly side: 'before' | 'after' | 'both';
  readonly label: string;
  readonly className: string;
  readonly points: readonly CurvePoint[];
}

/** What is before lies below what is after. */
function strokesOf({ lines }: Overlaid, [was, now]: OverlayDrawingProps['short']): readonly Stroke[] {
  const numbered = (number: number, letter: string) =>
    lines.length === 1 ? letter : `${number} ${letter}`.trim();
  const before = lines.flatMap(({ before: points, number, same }): Stroke[] =>
    points === null || same
      ? []
      : [{ side: 'before', label: numbered(number, was), className: 'plot-line plot-line-before', points }],
  );
  const after = lines.flatMap(({ after: points, number, same }): Stroke[] =>
    points === null
      ? []
      : [
          {
            side: same ? 'both' : 'after',
            label: same ? String(number) : numbered(number, now),
            className: lineClass(number),
            points,
          },
        ],
  );
  return [...before, ...after];
}

/** The line type of a line after, by its number. */
export function lineClass(number: number): string {
  return `plot-line plot-line-${(number - 1) % lineTypes} plot-line-after`;
}

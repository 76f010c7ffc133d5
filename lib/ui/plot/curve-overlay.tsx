// A curve of two revisions: both on one plot, with key, summary for the ear, and the numbers of both in a fold.
import type { Curve, CurveMark } from '@/lib/assess/assessment';
import type { CurvePair } from '@/lib/compare/curves';
import { printSI } from '@/lib/quantity/print';
import { Quantity } from '../marks/quantity';
import { PartFold } from '../sheet/part-fold';
import { CurveNumbers } from './curve-plot';
import { markLetter } from './layout';
import { type OverlaidLine, type OverlaidMark, overlaid, sameMark } from './overlaid';
import { lineClass, OverlayDrawing } from './overlay-drawing';

export interface SidesNamed {
  /** What each side is called in a sentence: `revision B`, `the draft`. */
  readonly names: readonly [before: string, after: string];
  /** What stands on its lines: `B`, `draft`. */
  readonly short: readonly [before: string, after: string];
}

interface CurveOverlayProps extends SidesNamed {
  readonly pair: CurvePair;
  readonly workedHref: string;
  /** Address of the page in full where the numbers are left off. */
  readonly inFull?: string | undefined;
}

export function CurveOverlay({ pair, names, short, workedHref, inFull }: CurveOverlayProps) {
  const of = overlaid(pair);
  if (of === null) return null;
  const { label, key } = of.curve;
  // Numbered as they are lettered on the plot: those after first.
  const marks = of.marks.filter((m) => m.after !== null);
  const gone = of.marks.filter((m) => m.after === null);
  return (
    <figure className="drawing-figure">
      <figcaption className="label">{label}</figcaption>
      <div role="img" aria-label={summary(pair, label, names)}>
        <OverlayDrawing of={of} short={short} />
      </div>
      <ul className="drawing-key plot-samples">
        {of.lines.map((line) => (
          <LineKey key={line.number} line={line} alone={of.lines.length === 1} names={names} />
        ))}
        {marks.map((mark, i) => (
          <MarkKey key={markLetter(i)} letter={markLetter(i)} mark={mark} curve={of.curve} names={names} />
        ))}
        {gone.map((mark) => (
          <MarkKey key={mark.before?.label} letter={null} mark={mark} curve={of.curve} names={names} />
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

interface OverlayNumbersProps extends Pick<SidesNamed, 'names'> {
  readonly pair: CurvePair;
}

/** The points of both sides, a table a line. */
export function OverlayNumbers({ pair: { before, after }, names }: OverlayNumbersProps) {
  return (
    <>
      {before === null ? null : <CurveNumbers curve={{ ...before, label: `${before.label}, ${names[0]}` }} />}
      {after === null ? null : <CurveNumbers curve={{ ...after, label: `${after.label}, ${names[1]}` }} />}
    </>
  );
}

interface LineKeyProps extends Pick<SidesNamed, 'names'> {
  readonly line: OverlaidLine;
  readonly alone: boolean;
}

function LineKey({ line, alone, names }: LineKeyProps) {
  const { number, nameBefore, nameAfter, same } = line;
  return (
    <li>
      <svg className="drawing" viewBox="0 0 40 14" aria-hidden="true" focusable="false">
        <path className={nameAfter === null ? 'plot-line plot-line-before' : lineClass(number)} d="M0 7H40" />
      </svg>
      <span>
        {alone ? null : <b>{number} </b>}
        {nameAfter ?? nameBefore}
        {lineNote(line, names)}
        {same ? ', as before' : ''}
      </span>
    </li>
  );
}

function lineNote({ nameBefore, nameAfter }: OverlaidLine, [was, now]: SidesNamed['names']): string {
  if (nameAfter === null) return `, only in ${was}`;
  if (nameBefore === null) return `, only in ${now}`;
  return nameBefore === nameAfter ? '' : ` (in ${was}: ${nameBefore})`;
}

interface MarkKeyProps extends Pick<SidesNamed, 'names'> {
  /** Null for a mark that only the side before has. */
  readonly letter: string | null;
  readonly mark: OverlaidMark;
  readonly curve: Curve;
}

function MarkKey({ letter, mark, curve, names: [was, now] }: MarkKeyProps) {
  const { before, after } = mark;
  const label = (after ?? before)?.label;
  return (
    <li>
      <span>
        <b className={letter === null ? undefined : 'warn'}>{letter === null ? '×' : `+ ${letter}`}</b>{' '}
        {label}:{' '}
        {before === null || sameMark(mark) ? null : (
          <>
            <At mark={before} curve={curve} alone={after?.x === before.x} />
            {after === null ? `, only in ${was}` : ' → '}
          </>
        )}
        {after === null ? null : <At mark={after} curve={curve} />}
        {before === null ? `, only in ${now}` : null}
      </span>
    </li>
  );
}

/** A place in numbers; `alone`: its x is said beside another. */
function At({
  mark,
  curve,
  alone = false,
}: {
  readonly mark: CurveMark;
  readonly curve: Curve;
  readonly alone?: boolean;
}) {
  return (
    <>
      <Quantity si={mark.y} unit={curve.yUnit} />
      {alone ? null : (
        <>
          {' '}
          at <Quantity si={mark.x} unit={curve.xUnit} />
        </>
      )}
    </>
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

// One row of the ladder: a dimension line from zero to what the element holds, or a hidden line with the words.
import { modeLabels } from '@/lib/assess/assessment';
import { type LadderLayout, type LadderRow, type RowArrow, unknownBox } from './layout';
import { arrowhead, breakSign } from './strokes';
import { textWidth } from './text-width';

interface RowProps {
  readonly row: LadderRow;
  readonly layout: LadderLayout;
}

/** Draws one row. */
export function LadderRowDrawing({ row, layout }: RowProps) {
  const below = row.check.status === 'below';
  return (
    <g className={rowTone(row)}>
      {row.arrow === null ? (
        <Unknown row={row} layout={layout} />
      ) : (
        <Arrow arrow={row.arrow} y={row.y} left={layout.left} weakest={row.weakest} right={layout.right} />
      )}
      <Mode row={row} layout={layout} below={below} />
    </g>
  );
}

/** Classes of a row: how it stands, and whether it is the weakest. */
export function rowTone(row: LadderRow): string {
  const below = row.check.status === 'below';
  const tone = row.arrow === null ? 'row-unknown' : below ? 'row-below' : 'row-holds';
  return row.weakest ? `${tone} row-weakest` : tone;
}

function Arrow(p: {
  readonly arrow: RowArrow;
  readonly y: number;
  readonly left: number;
  readonly right: number;
  readonly weakest: boolean;
}) {
  const { arrow: a, y } = p;
  const head = p.weakest ? arrowhead(a.tip, y, 15, 3.8) : arrowhead(a.tip, y, 11, 2.8);
  const end = a.tip - 8;
  const line = a.broken
    ? `M${p.left} ${y}H${p.right + 1}M${p.right + 17} ${y}H${end}`
    : `M${p.left} ${y}H${Math.max(end, p.left)}`;
  return (
    <>
      <path className="line-row" d={line} />
      {a.broken ? <path className="line-row" d={breakSign(p.right + 9, y)} /> : null}
      {a.low !== null && a.high !== null ? (
        <path
          className="line-scatter"
          d={`M${a.low} ${y - 5}v10M${a.high} ${y - 5}v10M${a.low} ${y}H${a.high}`}
        />
      ) : null}
      <path className="fill-row" d={head} />
      <rect className="fill-sheet" x={a.textX - 3} y={y - 9} width={a.textWidth + 5} height={18} />
      <text className="text-value" x={a.textX} y={y + 4.6}>
        {a.text}
      </text>
    </>
  );
}

function Unknown({ row, layout }: RowProps) {
  const { width, height } = unknownBox;
  return (
    <>
      <path className="line-hidden" d={`M${layout.left} ${row.y}H${layout.right}`} />
      <rect className="box-hidden" x={row.boxX} y={row.y - height / 2} width={width} height={height} />
      <text className="text-label" x={row.boxX + width / 2} y={row.y + 4} textAnchor="middle">
        NOT ASSESSED
      </text>
    </>
  );
}

function Mode({ row, layout, below }: RowProps & { readonly below: boolean }) {
  const wide = layout.form === 'wide';
  const y = wide ? row.y + 4.5 : row.nameY;
  const edge = layout.width;
  const word = modeLabels[row.check.mode];
  const width = textWidth(word, 12.5);
  const x = wide ? 746 : edge - (below ? 60 : 0) - width;
  return (
    <>
      {wide ? null : <rect className="fill-sheet" x={x - 4} y={y - 12} width={edge - x + 4} height={17} />}
      <text
        className="text-second"
        x={wide ? x : edge - (below ? 58 : 0)}
        y={y}
        textAnchor={wide ? 'start' : 'end'}
      >
        {word}
      </text>
      {below ? (
        <>
          <rect className="box-below" x={edge - 51.5} y={y - 12.5} width={51} height={17} />
          <text className="text-label text-below" x={edge - 26} y={y} textAnchor="middle">
            BELOW
          </text>
        </>
      ) : null}
    </>
  );
}

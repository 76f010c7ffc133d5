// The name of a row of the ladder: the way to how the element is worked, where the page has one.
import { workedPlace } from '../checks/worked-place';
import { rowTone } from './ladder-row';
import { type LadderLayout, type LadderRow, nameSize, nameStretch } from './layout';
import { textWidth } from './text-width';

interface NameProps {
  readonly row: LadderRow;
  readonly layout: LadderLayout;
  readonly workedHref?: string | undefined;
}

const line = 15;

/** At the left of its row, or above it on the narrow form. */
export function LadderName({ row, layout, workedHref }: NameProps) {
  const href = workedHref === undefined ? null : workedPlace(workedHref, row.check);
  const words = <Words row={row} layout={layout} />;
  return (
    <g className={rowTone(row)} aria-hidden={href === null ? true : undefined}>
      {href === null ? (
        words
      ) : (
        <a className="row-link" href={href} data-follow={`check-${row.check.key}`}>
          {words}
        </a>
      )}
    </g>
  );
}

function Words({ row, layout }: Pick<NameProps, 'row' | 'layout'>) {
  const wide = layout.form === 'wide';
  const widest = Math.max(...row.names.map((n) => textWidth(n, nameSize, nameStretch)));
  const width = Math.min(0.93 * widest + 3, wide ? layout.left - 12 : layout.width);
  return (
    <>
      {/* Room to press, and on the narrow form the sheet behind the words. */}
      <rect
        className={wide ? 'row-room' : 'fill-sheet'}
        x={wide ? layout.left - 12 - width : 0}
        y={row.nameY - 12}
        width={width}
        height={row.names.length * line + 1}
      />
      {row.names.map((name, i) => (
        <text
          key={name}
          className="text-name"
          x={wide ? layout.left - 12 : 0}
          y={row.nameY + i * line}
          textAnchor={wide ? 'end' : 'start'}
        >
          {name}
        </text>
      ))}
    </>
  );
}

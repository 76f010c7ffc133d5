// The one table of the service: ruled, with caption and scopes; on narrow sheets each row becomes a block of
// labelled cells, so that nothing ever scrolls the page sideways.
import type { ReactNode } from 'react';

export interface Column {
  readonly label: string;
  /** `number` sets cells right; `words` take a line of their own when narrow; `mark` puts them at the end of the row, and at the block's head when narrow. */
  readonly kind?: 'text' | 'words' | 'number' | 'mark' | undefined;
  /** The head is read aloud but not shown. */
  readonly silent?: boolean | undefined;
}

export interface Row {
  readonly key: string;
  readonly id?: string | undefined;
  /** One cell a column; the first is the row's head. */
  readonly cells: readonly ReactNode[];
  readonly tone?: 'plain' | 'below' | 'unknown' | 'struck' | undefined;
  /** A sentence across the row's full width, below it. */
  readonly note?: ReactNode;
}

interface RuledTableProps {
  /** What the table shows, for the ear; the view's heading says it to the eye. */
  readonly caption: string;
  readonly captionShown?: boolean | undefined;
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  /** Fixed column widths, so that several tables under one another line up. */
  readonly layout?:
    | 'checks'
    | 'figures'
    | 'fields'
    | 'follows'
    | 'changes'
    | 'entries'
    | 'shares'
    | undefined;
}

/** A ruled table. */
export function RuledTable({ caption, captionShown = false, columns, rows, layout }: RuledTableProps) {
  return (
    <table className="ruled" data-layout={layout}>
      <caption className={captionShown ? 'label' : 'for-ear'}>{caption}</caption>
      <thead>
        <tr>
          {columns.map((c) => (
            <th key={c.label} scope="col" className="label" data-kind={c.kind}>
              {c.silent === true ? <span className="for-ear">{c.label}</span> : c.label}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <TableRow key={row.key} row={row} columns={columns} />
        ))}
      </tbody>
    </table>
  );
}

function TableRow({ row, columns }: { readonly row: Row; readonly columns: readonly Column[] }) {
  const hasNote = row.note !== undefined && row.note !== null;
  return (
    <>
      <tr
        id={row.id}
        data-tone={row.tone === 'plain' ? undefined : row.tone}
        data-noted={hasNote ? true : undefined}
      >
        {columns.map((c, i) =>
          i === 0 ? (
            <th key={c.label} scope="row">
              {row.cells[0]}
            </th>
          ) : (
            <td key={c.label} data-kind={c.kind} data-label={c.silent === true ? undefined : c.label}>
              {row.cells[i]}
            </td>
          ),
        )}
      </tr>
      {hasNote ? (
        <tr className="ruled-note" data-tone={row.tone}>
          <td colSpan={columns.length}>{row.note}</td>
        </tr>
      ) : null}
    </>
  );
}

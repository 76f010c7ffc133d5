// What was entered: the fields of one part as a ruled table; worked steps lead here by `#field-<path>`.
import { Pins } from '../checks/pins';
import type { RemarkPin } from '../checks/remark-pin';
import { RuledTable } from '../table/ruled-table';
import { QuantitySymbol } from '../worked/quantity-symbol';
import { type ChangedFields, type EnteredRow, EnteredValue, isUnknown } from './entered-value';

interface FieldTableProps {
  /** E.g. `Stage 2, pinion`. */
  readonly caption: string;
  /** `name` stands in the place of the field's label: a part that is not described is one row of the part it stands in. */
  readonly rows: readonly (EnteredRow & { readonly name?: string | undefined })[];
  readonly pins?: readonly RemarkPin[] | undefined;
  readonly changed?: ChangedFields | undefined;
}

/** Table of entered values. */
export function FieldTable({ caption, rows, pins, changed }: FieldTableProps) {
  return (
    <RuledTable
      caption={caption}
      captionShown
      layout="fields"
      columns={[{ label: 'Field' }, { label: 'Symbol' }, { label: 'Entered', kind: 'number' }]}
      rows={rows.map((row) => ({
        key: row.path,
        id: `field-${row.path}`,
        tone: isUnknown(row) ? 'unknown' : 'plain',
        cells: [
          <span key="label">
            {row.name ?? row.field.label} <Pins pins={pins} at={row.path} />
          </span>,
          row.field.kind === 'quantity' ? <QuantitySymbol key="symbol" name={row.field.symbol} /> : null,
          <EnteredValue key="value" row={row} changed={changed} />,
        ],
      }))}
    />
  );
}

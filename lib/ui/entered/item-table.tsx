// The items of a list whose items hold nothing but fields: a row an item, a column a field.
import type { ItemRows } from '@/lib/preview/rows';
import { Pins } from '../checks/pins';
import type { RemarkPin } from '../checks/remark-pin';
import { RuledTable } from '../table/ruled-table';
import { type ChangedFields, EnteredValue } from './entered-value';

interface ItemTableProps {
  readonly list: { readonly label: string; readonly item: string; readonly items: readonly ItemRows[] };
  readonly pins?: readonly RemarkPin[] | undefined;
  readonly changed?: ChangedFields | undefined;
}

/** Table of a list; an empty one says so in a line. */
export function ItemTable({ list, pins, changed }: ItemTableProps) {
  const [first] = list.items;
  if (first === undefined) return <p className="hush">{list.label}: none.</p>;
  return (
    <RuledTable
      caption={list.label}
      captionShown
      columns={[
        { label: list.item },
        ...first.fields.map(({ field }) => ({
          label: field.label,
          kind: field.kind === 'quantity' ? ('number' as const) : ('text' as const),
        })),
      ]}
      rows={list.items.map((item) => ({
        key: item.id,
        cells: [
          item.label,
          ...item.fields.map((row) => (
            <span key={row.path} id={`field-${row.path}`}>
              <EnteredValue row={row} changed={changed} /> <Pins pins={pins} at={row.path} />
            </span>
          )),
        ],
      }))}
    />
  );
}

// What was entered: the fields of one part as a ruled table; worked steps lead here by `#field-<path>`.
import type { LeafField } from '@/lib/quantity/field';
import { printEntered, unitTail } from '@/lib/quantity/print';
import { Pins } from '../checks/pins';
import type { RemarkPin } from '../checks/remark-pin';
import { Cloud } from '../marks/cloud';
import { RevisionTriangle } from '../marks/revision-triangle';
import { RuledTable } from '../table/ruled-table';
import { QuantitySymbol } from '../worked/quantity-symbol';

interface FieldTableProps {
  /** E.g. `Stage 2, pinion`. */
  readonly caption: string;
  readonly rows: readonly { readonly path: string; readonly field: LeafField; readonly text: string }[];
  readonly pins?: readonly RemarkPin[] | undefined;
  /** Fields that this revision changed, for its triangle and cloud. */
  readonly changed?: ChangedFields | undefined;
}

export interface ChangedFields {
  readonly letter: string;
  readonly paths: ReadonlySet<string>;
}

/** Table of entered values; what is unknown says so. */
export function FieldTable({ caption, rows, pins, changed }: FieldTableProps) {
  return (
    <RuledTable
      caption={caption}
      captionShown
      layout="fields"
      columns={[{ label: 'Field' }, { label: 'Symbol' }, { label: 'Entered', kind: 'number' }]}
      rows={rows.map(({ path, field, text }) => ({
        key: path,
        id: `field-${path}`,
        tone: text === '' && field.kind !== 'text' ? 'unknown' : 'plain',
        cells: [
          <span key="label">
            {field.label} <Pins pins={pins} at={path} />
          </span>,
          field.kind === 'quantity' ? <QuantitySymbol key="symbol" name={field.symbol} /> : null,
          changed?.paths.has(path) === true ? (
            <span key="value" className="change-new">
              <RevisionTriangle letter={changed.letter} />
              <Cloud>
                <Entered field={field} text={text} />
              </Cloud>
            </span>
          ) : (
            <Entered key="value" field={field} text={text} />
          ),
        ],
      }))}
    />
  );
}

function Entered({ field, text }: { readonly field: LeafField; readonly text: string }) {
  if (field.kind === 'choice') return field.options[text] ?? 'unknown';
  if (text === '') return field.kind === 'text' ? '–' : 'unknown';
  if (field.kind !== 'quantity') return text;
  return (
    <span className="number">
      {printEntered(Number(text))}
      <span className="unit">{unitTail(field.unit)}</span>
    </span>
  );
}

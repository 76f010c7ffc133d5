// Values of a catalogue: nominal, range, how well founded, and the source; an absent source is said, not hidden.
import type { CatalogValue } from '@/lib/catalog/value';
import { printEntered } from '@/lib/quantity/print';
import { WordMark } from '../marks/word-mark';
import { RuledTable } from '../table/ruled-table';
import { printUnit } from '../worked/si-quantity';
import { basisWords } from './basis';

interface MaterialTableProps {
  /** E.g. `PETG (printed)`. */
  readonly caption: string;
  readonly rows: readonly { readonly label: string; readonly value: CatalogValue }[];
}

/** Table of catalogue values; a row's address is `#row-<key>`. */
export function MaterialTable({ caption, rows }: MaterialTableProps) {
  return (
    <RuledTable
      caption={caption}
      layout="fields"
      columns={[
        { label: 'Property' },
        { label: 'Nominal', kind: 'number' },
        { label: 'Range', kind: 'number' },
        { label: 'Source', kind: 'words' },
        { label: 'Basis', kind: 'mark', silent: true },
      ]}
      rows={rows.map(({ label, value }) => ({
        key: value.key,
        id: `row-${value.key}`,
        cells: [
          label,
          <Valued key="value" text={printEntered(value.value)} unit={value.unit} />,
          <Valued
            key="range"
            text={`${printEntered(value.low)} to ${printEntered(value.high)}`}
            unit={value.unit}
          />,
          <span key="source" className="hush">
            {value.source}
          </span>,
          <WordMark key="basis" kind={value.basis === 'memory' ? 'not-assessed' : 'holds'}>
            {basisWords[value.basis]}
          </WordMark>,
        ],
        note: value.note,
      }))}
    />
  );
}

function Valued({ text, unit }: { readonly text: string; readonly unit: string }) {
  const print = unit === 'C' ? '°C' : printUnit(unit);
  return (
    <span className="number">
      {text}
      {print === '' ? null : <span className="unit">{`\u202f${print}`}</span>}
    </span>
  );
}

// Values of a catalogue: nominal, range, how well founded, and the source; an absent source is said, not hidden.
import type { Basis, CatalogValue } from '@/lib/catalog/value';
import { printEntered } from '@/lib/quantity/print';
import { WordMark } from '../marks/word-mark';
import { RuledTable } from '../table/ruled-table';
import { printUnit } from '../worked/si-quantity';

interface MaterialTableProps {
  /** E.g. `PETG (printed)`. */
  readonly caption: string;
  readonly rows: readonly { readonly label: string; readonly value: CatalogValue }[];
}

const bases: Readonly<Record<Basis, string>> = {
  sourced: 'read',
  mixed: 'adapted',
  memory: 'from memory',
  definition: 'definition',
  tested: 'tested by the club',
};

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
            {bases[value.basis]}
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

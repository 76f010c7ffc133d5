// One entered value as a sheet shows it; what is unknown says so.
import type { LeafField } from '@/lib/quantity/field';
import { printEntered, unitTail } from '@/lib/quantity/print';
import { Cloud } from '../marks/cloud';
import { RevisionTriangle } from '../marks/revision-triangle';

/** Fields that a revision changed, for its triangle and cloud. */
export interface ChangedFields {
  readonly letter: string;
  readonly paths: ReadonlySet<string>;
}

export interface EnteredRow {
  readonly path: string;
  readonly field: LeafField;
  readonly text: string;
}

interface EnteredValueProps {
  readonly row: EnteredRow;
  readonly changed?: ChangedFields | undefined;
}

export function EnteredValue({ row, changed }: EnteredValueProps) {
  if (changed?.paths.has(row.path) !== true) return <Entered {...row} />;
  return (
    <span className="change-new">
      <RevisionTriangle letter={changed.letter} />
      <Cloud>
        <Entered {...row} />
      </Cloud>
    </span>
  );
}

/** Whether nothing is known of it: a name may be empty, a number or choice then is unknown. */
export function isUnknown({ field, text }: EnteredRow): boolean {
  return text === '' && field.kind !== 'text';
}

function Entered({ field, text }: EnteredRow) {
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

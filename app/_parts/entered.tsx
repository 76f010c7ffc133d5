// What was entered in a document, part by part, folded.
import type { Design } from '@/lib/design/document';
import { type GroupRows, type PartRows, rowsOf } from '@/lib/preview/rows';
import type { RemarkPin } from '@/lib/ui/checks/remark-pin';
import { type ChangedFields, FieldTable } from '@/lib/ui/entered/field-table';
import { RevisionTriangle } from '@/lib/ui/marks/revision-triangle';

interface EnteredProps {
  readonly document: Design;
  readonly pins?: readonly RemarkPin[];
  readonly open?: boolean;
  /** What this revision changed: marked, and said at the folds. */
  readonly changed?: ChangedFields | undefined;
}

export function Entered({ document, pins, open = false, changed }: EnteredProps) {
  return rowsOf({ document, pending: {} }).map((part) => (
    <details key={part.key} open={open}>
      <summary>
        {part.label}
        {changed === undefined ? null : <ChangedCount part={part} changed={changed} />}
      </summary>
      {groupsOf(part).map((g) => (
        <FieldTable key={g.path} caption={g.label} rows={g.fields} pins={pins} changed={changed} />
      ))}
    </details>
  ));
}

function groupsOf(part: PartRows): GroupRows[] {
  const stages = (part.stages ?? []).flatMap((s) => [
    s,
    ...s.gears.map((g) => ({ ...g, label: `${s.label}, ${g.label.toLowerCase()}` })),
  ]);
  return [part, ...stages];
}

function ChangedCount({ part, changed }: { readonly part: PartRows; readonly changed: ChangedFields }) {
  const fields = groupsOf(part).flatMap((g) => g.fields);
  const count = fields.filter((f) => changed.paths.has(f.path)).length;
  if (count === 0) return null;
  return (
    <>
      {' '}
      <RevisionTriangle letter={changed.letter} what={`in revision ${changed.letter}`} />{' '}
      {count === 1 ? '1 changed' : `${count} changed`}
    </>
  );
}

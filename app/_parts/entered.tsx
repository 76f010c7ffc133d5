// What was entered in a document, part by part, folded.
import type { Design } from '@/lib/design/document';
import { type GroupRows, type PartRows, rowsOf } from '@/lib/preview/rows';
import type { RemarkPin } from '@/lib/ui/checks/remark-pin';
import { FieldTable } from '@/lib/ui/entered/field-table';

interface EnteredProps {
  readonly document: Design;
  readonly pins?: readonly RemarkPin[];
  readonly open?: boolean;
}

export function Entered({ document, pins, open = false }: EnteredProps) {
  return rowsOf({ document, pending: {} }).map((part) => (
    <details key={part.key} open={open}>
      <summary>{part.label}</summary>
      {groupsOf(part).map((g) => (
        <FieldTable key={g.path} caption={g.label} rows={g.fields} pins={pins} />
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

// The edits that turn one document into another, as a person would type them.
import type { Design } from '@/lib/design/document';
import { applyEdit, type Edit } from '@/lib/design/edit';
import { type FieldValue, fieldsOf } from '@/lib/design/walk';

/** Stages first, then every field that differs. Both documents are valid; the edits are all taken. */
export function editsBetween(from: Design, to: Design): Edit[] {
  const stages = stageEdits(from, to);
  const staged = stages.reduce((content, edit) => applyEdit(content, edit).content, {
    document: from,
    pending: {},
  });
  const before = new Map(fieldsOf(staged.document).map((f) => [f.path, f.value]));
  const fields = fieldsOf(to)
    .filter((f) => before.get(f.path) !== f.value)
    .map((f): Edit => ({ do: 'set', path: f.path, text: typed(f.value) }));
  return [...stages, ...fields];
}

/** New stages in their order behind the old ones, then the old ones away; those that stay keep their place. */
function stageEdits(from: Design, to: Design): Edit[] {
  const had = from.train.stages.map((s) => s.id);
  const wanted = to.train.stages.map((s) => s.id);
  const like = had[0];
  if (like === undefined) return [];
  const insert = wanted
    .filter((id) => !had.includes(id))
    .map((id): Edit => {
      const at = wanted.indexOf(id);
      return { do: 'insertStage', id, after: wanted[at - 1] ?? null, like };
    });
  const remove = had.filter((id) => !wanted.includes(id)).map((id): Edit => ({ do: 'removeStage', id }));
  return [...insert, ...remove];
}

function typed(value: FieldValue): string {
  if (value === null) return '';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return String(value);
}

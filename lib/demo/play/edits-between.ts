// The edits that turn one document into another, as a person would type them.
import type { Design } from '@/lib/design/document';
import { applyEdit, type Edit } from '@/lib/design/edit';
import { valueAt } from '@/lib/design/path';
import { itemStarts, type ListPath } from '@/lib/design/starts';
import { type FieldValue, fieldsOf } from '@/lib/design/walk';

/** Items of lists first, then every field that differs. Both documents are valid; the edits are all taken. */
export function editsBetween(from: Design, to: Design): Edit[] {
  const items = listPaths.flatMap((list) => itemEdits(list, idsOf(from, list), idsOf(to, list)));
  const staged = items.reduce((content, edit) => applyEdit(content, edit).content, {
    document: from,
    pending: {},
  });
  const before = new Map(fieldsOf(staged.document).map((f) => [f.path, f.value]));
  const fields = fieldsOf(to)
    .filter((f) => before.get(f.path) !== f.value)
    .map((f): Edit => ({ do: 'set', path: f.path, text: typed(f.value) }));
  return [...items, ...fields];
}

// Object.keys forgets the literal keys.
const listPaths = Object.keys(itemStarts) as ListPath[];

function idsOf(document: Design, list: ListPath): string[] {
  const items = valueAt(document, list);
  return Array.isArray(items) ? items.map(({ id }) => id) : [];
}

/** New items in their order behind the old ones, then the old ones away; those that stay keep their place. */
function itemEdits(list: ListPath, had: readonly string[], wanted: readonly string[]): Edit[] {
  const insert = wanted
    .filter((id) => !had.includes(id))
    .map((id): Edit => {
      const after = wanted[wanted.indexOf(id) - 1] ?? null;
      return { do: 'insert', list, id, after, like: had[0] ?? null };
    });
  const gone = had.filter((id) => !wanted.includes(id));
  return [...insert, ...gone.map((id): Edit => ({ do: 'remove', list, id }))];
}

function typed(value: FieldValue): string {
  if (value === null) return '';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return String(value);
}

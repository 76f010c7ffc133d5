// A draft as the form shows it: the document's own tree of parts, groups, lists and fields, each field with its text and
// its problem.
import { applyEdit, type DraftContent, type Edit, pendingProblems } from '@/lib/design/edit';
import { newItemId } from '@/lib/design/new-item-id';
import { valueAt } from '@/lib/design/path';
import { itemStarts, type ListPath } from '@/lib/design/starts';
import { type FieldAt, fieldsOf, type ListAt, type PartAt, treeOf } from '@/lib/design/walk';
import type { LeafField } from '@/lib/quantity/field';

export interface FieldRow {
  readonly path: string;
  readonly field: LeafField;
  readonly text: string;
  readonly problem: string | null;
}

export interface GroupRows {
  /** Path of the group: a part, a stage, a gear, a hub. */
  readonly path: string;
  readonly label: string;
  readonly help: string;
  /** Labels from the outside in, with its own. */
  readonly trail: readonly string[];
  /** The row that chooses its shape; null for a group of one shape. */
  readonly kind: FieldRow | null;
  /** Its other fields. */
  readonly fields: readonly FieldRow[];
  readonly groups: readonly GroupRows[];
  readonly lists: readonly ListRows[];
}

export interface ItemRows extends GroupRows {
  readonly id: string;
}

export interface ListRows {
  readonly path: string;
  readonly label: string;
  readonly help: string;
  /** What one of it is called, e.g. `Stage`. */
  readonly item: string;
  readonly min: number;
  readonly max: number;
  /** The list as edits name it; null where a person may not lengthen it here. */
  readonly edits: ListPath | null;
  readonly items: readonly ItemRows[];
}

export interface PartRows extends GroupRows {
  /** How many texts of this part do not fit yet. */
  readonly waiting: number;
}

/** The form of a draft, in the order of the power flow. */
export function rowsOf(content: DraftContent): PartRows[] {
  const row = rowsWith(content, pendingProblems(content));
  return treeOf(content.document).map((part) => {
    const group = groupRows(part, row);
    return { ...group, waiting: waitingIn(group) };
  });
}

/** Every field of a group, those of the groups and lists within it too; its kind first. */
export function fieldsIn(group: GroupRows): FieldRow[] {
  const found: FieldRow[] = [];
  gather(group, found);
  return found;
}

/** How many texts of a group do not fit yet. */
export function waitingIn(group: GroupRows): number {
  return fieldsIn(group).filter((row) => row.problem !== null).length;
}

/** The edit that puts a new item into a list: after another and alike it, or as the first of an empty list. */
export function insertAfter(content: DraftContent, list: ListPath, after: string | null): Edit {
  return { do: 'insert', list, id: newItemId(idsOf(content, list)), after, like: after };
}

/** The text of every field, by path: what a form shows when it is opened. */
export function textsOf(content: DraftContent): Record<string, string> {
  const row = rowsWith(content, {});
  return Object.fromEntries(fieldsOf(content.document).map((at) => [at.path, row(at).text]));
}

/**
 * The edits that a posted form makes: one for each field whose text is not the one the form was opened with. What others
 * saved since is no edit of the form's.
 */
export function editsOfForm(
  opened: Readonly<Record<string, string>>,
  posted: ReadonlyMap<string, string>,
): Edit[] {
  return Object.entries(opened).flatMap(([path, before]) => {
    const text = posted.get(path);
    return text === undefined || text === before ? [] : [{ do: 'set' as const, path, text }];
  });
}

/** The draft with edits on top of it. */
export function withEdits(content: DraftContent, edits: readonly Edit[]): DraftContent {
  return edits.reduce((before, edit) => applyEdit(before, edit).content, content);
}

type RowOf = (at: FieldAt) => FieldRow;

function rowsWith(content: DraftContent, problems: Readonly<Record<string, string>>): RowOf {
  return (at) => ({
    path: at.path,
    field: at.field,
    text: content.pending[at.path] ?? entered(at),
    problem: problems[at.path] ?? null,
  });
}

function groupRows(part: PartAt, row: RowOf): GroupRows {
  const { path, label, help, trail, varies } = part;
  const kind = varies ? part.fields.find((at) => at.path === `${path}.kind`) : undefined;
  return {
    ...{ path, label, help, trail },
    kind: kind === undefined ? null : row(kind),
    fields: part.fields.filter((at) => at !== kind).map(row),
    groups: part.parts.map((inner) => groupRows(inner, row)),
    lists: part.lists.map((list) => listRows(list, row)),
  };
}

function listRows({ path, field, items }: ListAt, row: RowOf): ListRows {
  const { label, help, item, min, max } = field;
  const edits = isListPath(path) ? path : null;
  return {
    ...{ path, label, help, item, min, max, edits },
    items: items.map((one) => ({ ...groupRows(one, row), id: one.id })),
  };
}

function isListPath(path: string): path is ListPath {
  return Object.hasOwn(itemStarts, path);
}

function idsOf({ document }: DraftContent, list: ListPath): string[] {
  const items = valueAt(document, list);
  return Array.isArray(items) ? items.map(({ id }) => String(id)) : [];
}

function gather(group: GroupRows, found: FieldRow[]): void {
  if (group.kind !== null) found.push(group.kind);
  found.push(...group.fields);
  for (const inner of group.groups) gather(inner, found);
  for (const list of group.lists) for (const item of list.items) gather(item, found);
}

function entered({ value }: FieldAt): string {
  if (value === null) return '';
  return typeof value === 'boolean' ? (value ? 'yes' : 'no') : String(value);
}

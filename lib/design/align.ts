// Two documents laid side by side by stable ids: which fields changed, which items of lists came, went or moved.
import type { LeafField } from '@/lib/quantity/field';
import type { Design } from './document';
import { fieldAt } from './path';
import {
  type FieldAt,
  type FieldValue,
  fieldsOf,
  type ItemAt,
  type ListAt,
  type PartAt,
  treeOf,
} from './walk';

export interface FieldChange {
  readonly path: string;
  readonly field: LeafField;
  readonly trail: readonly string[];
  /** Null where it was unknown, and where the field was not there. */
  readonly before: FieldValue;
  readonly after: FieldValue;
  /** The part that holds it was of another shape, which had no such field. */
  readonly isNew: boolean;
}

export interface ItemChange {
  /** Path of the list, e.g. `train.stages`. */
  readonly list: string;
  /** What one of it is called, e.g. `Stage`. */
  readonly item: string;
  readonly id: string;
  readonly kind: 'added' | 'removed' | 'moved';
  /** Places in the list, counted from 1; null where the item is not there. */
  readonly from: number | null;
  readonly to: number | null;
  /** As it is now; as it was, where it is gone. */
  readonly held: ItemAt;
}

export interface Alignment {
  readonly fields: readonly FieldChange[];
  readonly items: readonly ItemChange[];
}

/**
 * What changed from one document to another. Fields of an item that is only in one of them are not listed singly. Where a
 * part became another shape, its kind is a changed field, what only the new shape has and is entered is new, and what only
 * the old shape had is gone without a line of its own.
 */
export function align(before: Design, after: Design): Alignment {
  const items = itemChanges(treeOf(before), treeOf(after));
  const added = items.filter(({ kind }) => kind === 'added').map(({ held }) => `${held.path}.`);
  const old = new Map(fieldsOf(before).map((f) => [f.path, f.value]));
  const fields = fieldsOf(after).flatMap((now): FieldChange[] => {
    if (added.some((path) => now.path.startsWith(path))) return [];
    const was = old.get(now.path);
    if (was === undefined) return saysNothing(now) ? [] : [changed(null, now, true)];
    return was === now.value ? [] : [changed(was, now, false)];
  });
  return { fields, items };
}

function changed(before: FieldValue, now: FieldAt, isNew: boolean): FieldChange {
  return { path: now.path, field: now.field, trail: now.trail, before, after: now.value, isNew };
}

/** Unknown, empty, or a part that is as yet of its first kind: nothing that anyone entered. */
function saysNothing({ path, field, value }: FieldAt): boolean {
  if (value === null || value === '') return true;
  if (!path.endsWith('.kind') || field.kind !== 'choice') return false;
  const part = fieldAt(path.slice(0, -'.kind'.length));
  return part?.kind === 'variants' && Object.keys(field.options)[0] === value;
}

/** Lists that both have, in the order of the parts. */
function itemChanges(before: readonly PartAt[], after: readonly PartAt[]): ItemChange[] {
  const old = new Map(listsIn(before).map((list) => [list.path, list]));
  return listsIn(after).flatMap((now) => {
    const was = old.get(now.path);
    return was === undefined ? [] : changesOf(was, now);
  });
}

function listsIn(parts: readonly PartAt[]): ListAt[] {
  return parts.flatMap((part) => [
    ...listsIn(part.parts),
    ...part.lists,
    ...part.lists.flatMap((list) => listsIn(list.items)),
  ]);
}

function changesOf(before: ListAt, after: ListAt): ItemChange[] {
  const [was, now] = [before.items, after.items];
  const [old, current] = [was.map(({ id }) => id), now.map(({ id }) => id)];
  const stayed = now.filter(({ id }) => old.includes(id));
  const order = old.filter((id) => current.includes(id));
  const place = (ids: readonly string[], id: string) => (ids.includes(id) ? ids.indexOf(id) + 1 : null);
  const told =
    (kind: ItemChange['kind']) =>
    (held: ItemAt): ItemChange => ({
      ...{ list: after.path, item: after.field.item, id: held.id, kind },
      ...{ from: place(old, held.id), to: place(current, held.id), held },
    });
  return [
    ...was.filter(({ id }) => !current.includes(id)).map(told('removed')),
    ...now.filter(({ id }) => !old.includes(id)).map(told('added')),
    // An item moved when its place among those that stayed is another; mere insertion before it moves nothing.
    ...stayed.filter(({ id }, i) => order[i] !== id).map(told('moved')),
  ];
}

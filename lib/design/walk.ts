// Walking a document beside its schema: its parts as a tree, and every field with its stable path, description, value
// and trail of labels.
import { z } from 'zod';
import { fieldOf, type LeafField, type ListField, variantOf } from '@/lib/quantity/field';
import type { Design } from './document';
import { partKeys, parts } from './document';

export type FieldValue = number | string | boolean | null;

export interface FieldAt {
  /** Stable path through ids: `train.stages.k3f.pinion.teeth`. */
  readonly path: string;
  readonly field: LeafField;
  readonly value: FieldValue;
  /** Labels from the outside in, without the field's own: `['Train', 'Stage 2', 'Pinion']`. */
  readonly trail: readonly string[];
}

/** A part as the document holds it: a part of several shapes in the shape that its kind gives it. */
export interface PartAt {
  readonly path: string;
  /** The last of the trail: `Pinion`, `Stage 2`. */
  readonly label: string;
  readonly help: string;
  /** Labels from the outside in, with its own. */
  readonly trail: readonly string[];
  /** Whether it is one of several shapes, told by its `kind`. */
  readonly varies: boolean;
  readonly fields: readonly FieldAt[];
  readonly parts: readonly PartAt[];
  readonly lists: readonly ListAt[];
}

export interface ListAt {
  readonly path: string;
  readonly field: ListField;
  readonly trail: readonly string[];
  readonly items: readonly ItemAt[];
}

export interface ItemAt extends PartAt {
  readonly id: string;
}

/** The document as a tree, its parts in their order; a part that is a list stands there as one without fields. */
export function treeOf(document: Design): PartAt[] {
  return partKeys.map((key) => {
    const schema: z.core.$ZodType = parts[key];
    if (!(schema instanceof z.ZodArray)) return partAt(schema, document[key], key, []);
    const list = listAt(schema, document[key], key, []);
    const { label, help } = list.field;
    return { path: key, label, help, trail: [label], varies: false, fields: [], parts: [], lists: [list] };
  });
}

/** Every field of the document in the order of its parts; those of a part before those of the parts within it. */
export function fieldsOf(document: Design): FieldAt[] {
  const found: FieldAt[] = [];
  for (const part of treeOf(document)) gather(part, found);
  return found;
}

/** The fields of one part, stage or gear: those whose path starts there. */
export function fieldsUnder(document: Design, path: string): FieldAt[] {
  return fieldsOf(document).filter((f) => f.path.startsWith(`${path}.`));
}

function gather(part: PartAt, found: FieldAt[]): void {
  found.push(...part.fields);
  for (const inner of part.parts) gather(inner, found);
  for (const list of part.lists) for (const item of list.items) gather(item, found);
}

function partAt(
  schema: z.core.$ZodType,
  value: unknown,
  path: string,
  outer: readonly string[],
  called?: string,
): PartAt {
  const described = fieldOf(schema);
  const label = called ?? described?.label ?? path;
  const trail = [...outer, label];
  const [fields, inner, lists]: [FieldAt[], PartAt[], ListAt[]] = [[], [], []];
  for (const [key, child] of Object.entries(shapeOf(schema, value))) {
    const field = fieldOf(child);
    const [here, held] = [`${path}.${key}`, isRecord(value) ? value[key] : undefined];
    if (field === undefined || held === undefined) continue;
    if (field.kind === 'list') lists.push(listAt(child, held, here, trail));
    else if (field.kind === 'part' || field.kind === 'variants') inner.push(partAt(child, held, here, trail));
    else if (isLeaf(held)) fields.push({ path: here, field, value: held, trail });
  }
  const [help, varies] = [
    described !== undefined && 'help' in described ? described.help : '',
    described?.kind === 'variants',
  ];
  return { path, label, help, trail, varies, fields, parts: inner, lists };
}

/** The fields of a part, in the shape that its kind gives it. */
function shapeOf(schema: z.core.$ZodType, value: unknown): Readonly<Record<string, z.core.$ZodType>> {
  if (!isRecord(value)) return {};
  const object = schema instanceof z.ZodObject ? schema : variantOf(schema, value.kind);
  return object?.shape ?? {};
}

function listAt(schema: z.core.$ZodType, value: unknown, path: string, outer: readonly string[]): ListAt {
  const field = fieldOf(schema);
  if (field?.kind !== 'list' || !(schema instanceof z.ZodArray) || !Array.isArray(value))
    throw new Error(`There is no list ${path}.`);
  const items = value.map((one: unknown, i): ItemAt => {
    const id = String(Reflect.get(Object(one), 'id'));
    // An item is named by its place; the list's own label adds nothing to that.
    return { ...partAt(schema.element, one, `${path}.${id}`, outer, `${field.item} ${i + 1}`), id };
  });
  return { path, field, trail: [...outer, field.label], items };
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isLeaf(value: unknown): value is FieldValue {
  return (
    value === null || typeof value === 'number' || typeof value === 'string' || typeof value === 'boolean'
  );
}

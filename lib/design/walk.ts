// Walking a document beside its schema: every field with its stable path, description, value and trail of labels.
import { z } from 'zod';
import { fieldOf, type LeafField, variantOf } from '@/lib/quantity/field';
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

/** Every field of the document in the order of its parts. */
export function fieldsOf(document: Design): FieldAt[] {
  const found: FieldAt[] = [];
  for (const key of partKeys) visit(parts[key], document[key], key, [], found);
  return found;
}

/** The fields of one part, stage or gear: those whose path starts there. */
export function fieldsUnder(document: Design, path: string): FieldAt[] {
  return fieldsOf(document).filter((f) => f.path.startsWith(`${path}.`));
}

function visit(
  schema: z.core.$ZodType,
  value: unknown,
  path: string,
  trail: readonly string[],
  found: FieldAt[],
): void {
  const field = fieldOf(schema);
  if (field === undefined) return;
  if (field.kind === 'list') visitList(schema, field.item, value, path, [...trail, field.label], found);
  else if (field.kind === 'part' || field.kind === 'variants')
    visitFields(schema, value, path, [...trail, field.label], found);
  else if (isLeaf(value)) found.push({ path, field, value, trail });
}

/** The fields of a part, in the shape that its kind gives it. */
function visitFields(
  schema: z.core.$ZodType,
  value: unknown,
  path: string,
  trail: readonly string[],
  found: FieldAt[],
): void {
  if (!isRecord(value)) return;
  const object = schema instanceof z.ZodObject ? schema : variantOf(schema, value.kind);
  if (object === undefined) return;
  for (const [key, child] of Object.entries<z.core.$ZodType>(object.shape))
    visit(child, value[key], `${path}.${key}`, trail, found);
}

function visitList(
  schema: z.core.$ZodType,
  item: string,
  value: unknown,
  path: string,
  trail: readonly string[],
  found: FieldAt[],
): void {
  if (!(schema instanceof z.ZodArray) || !Array.isArray(value)) return;
  // An item is named by its place; the list's own label adds nothing to that.
  const outer = trail.slice(0, -1);
  value.forEach((one: unknown, i) => {
    if (isRecord(one))
      visitFields(schema.element, one, `${path}.${one.id}`, [...outer, `${item} ${i + 1}`], found);
  });
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isLeaf(value: unknown): value is FieldValue {
  return (
    value === null || typeof value === 'number' || typeof value === 'string' || typeof value === 'boolean'
  );
}

// Walking a document beside its schema: every field with its stable path, description, value and trail of labels.
import { z } from 'zod';
import { fieldOf, type LeafField } from '@/lib/quantity/field';
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
  if (field.kind === 'part' && schema instanceof z.ZodObject && isRecord(value)) {
    const inner = [...trail, field.label];
    for (const [key, child] of Object.entries(schema.shape))
      visit(child, value[key], `${path}.${key}`, inner, found);
  } else if (field.kind === 'list' && schema instanceof z.ZodArray && Array.isArray(value)) {
    for (const [i, item] of value.entries()) visitItem(schema, field.item, item, i, path, trail, found);
  } else if (field.kind !== 'part' && field.kind !== 'list' && isLeaf(value)) {
    found.push({ path, field, value, trail });
  }
}

function visitItem(
  schema: z.ZodArray,
  item: string,
  value: unknown,
  index: number,
  path: string,
  trail: readonly string[],
  found: FieldAt[],
): void {
  if (!isRecord(value) || !(schema.element instanceof z.ZodObject)) return;
  const inner = [...trail, `${item} ${index + 1}`];
  for (const [key, child] of Object.entries(schema.element.shape))
    visit(child, value[key], `${path}.${value.id}.${key}`, inner, found);
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isLeaf(value: unknown): value is FieldValue {
  return (
    value === null || typeof value === 'number' || typeof value === 'string' || typeof value === 'boolean'
  );
}

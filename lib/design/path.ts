// Paths through ids: reading and replacing one value of a document, never by position.
import { z } from 'zod';
import { type Field, fieldOf, type LeafField, shapesOf } from '@/lib/quantity/field';
import { type Design, design } from './document';

/**
 * The description at a path, whatever the document holds there; undefined for no such field. Where a part has several
 * shapes, a name means the same field in each that has it.
 */
export function fieldAt(path: string): Field | undefined {
  const schema = schemaAt(path);
  return schema === undefined ? undefined : fieldOf(schema);
}

/** The schema node at a path. */
export function schemaAt(path: string): z.core.$ZodType | undefined {
  let schema: z.core.$ZodType | undefined = design;
  for (const key of path.split('.')) {
    if (schema instanceof z.ZodArray) schema = schema.element;
    else if (schema instanceof z.ZodObject) schema = ownShape(schema.shape, key);
    else if (schema instanceof z.ZodDiscriminatedUnion) schema = inAnyShape(schema, key);
    else return undefined;
  }
  return schema;
}

function inAnyShape(union: z.core.$ZodType, key: string): z.core.$ZodType | undefined {
  for (const { shape } of shapesOf(union)) {
    const found = ownShape(shape, key);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** The description of a single field (not a part or list) at a path. */
export function leafAt(path: string): LeafField | undefined {
  const field = fieldAt(path);
  if (field === undefined || field.kind === 'part' || field.kind === 'list' || field.kind === 'variants')
    return undefined;
  return field;
}

/** The value at a path, or undefined when a step of it does not exist. */
export function valueAt(document: Design, path: string): unknown {
  let here: unknown = document;
  for (const key of path.split('.')) here = child(here, key);
  return here;
}

/** The document with the value at one path replaced; the same document when the path does not exist. Nothing is mutated. */
export function withValue(document: Design, path: string, value: unknown): Design {
  // The path was checked to exist and the value to fit its schema by the caller (lib/design/edit).
  return replace(document, path.split('.'), value) as Design;
}

function replace(here: unknown, keys: readonly string[], value: unknown): unknown {
  const [key, ...rest] = keys;
  if (key === undefined) return value;
  if (Array.isArray(here)) return here.map((item) => (item?.id === key ? replace(item, rest, value) : item));
  if (typeof here !== 'object' || here === null || !Object.hasOwn(here, key)) return here;
  return { ...here, [key]: replace(child(here, key), rest, value) };
}

function child(here: unknown, key: string): unknown {
  if (Array.isArray(here)) return here.find((item) => item?.id === key);
  if (typeof here !== 'object' || here === null || !Object.hasOwn(here, key)) return undefined;
  return (here as Record<string, unknown>)[key];
}

function ownShape(
  shape: Readonly<Record<string, z.core.$ZodType>>,
  key: string,
): z.core.$ZodType | undefined {
  return Object.hasOwn(shape, key) ? shape[key] : undefined;
}

// A document read into SI for calculation: each number carries the path of the field it came from.
import { z } from 'zod';
import { fieldOf, variantOf } from '@/lib/quantity/field';
import type { Read } from '@/lib/quantity/traced';
import { toSI } from '@/lib/quantity/units';
import { type Design, design } from './document';

export type DesignSI = Read<Design>;

/** Every quantity converted to SI by its schema and traced as `field:<path>`; unknown stays null. */
export function readSI(document: Design): DesignSI {
  // The walk keeps the document's shape and only swaps numbers for traced ones, which is what Read says.
  return visit(design, document, '') as DesignSI;
}

type Parts = readonly (readonly [key: string, schema: z.core.$ZodType])[];

const known = new WeakMap<z.ZodObject, Parts>();

/** Reading a schema's shape is slow: each is read once. */
function partsOf(object: z.ZodObject): Parts {
  const met = known.get(object) ?? Object.entries(object.shape);
  known.set(object, met);
  return met;
}

function visit(schema: z.core.$ZodType, value: unknown, path: string): unknown {
  if (typeof value === 'object' && value !== null && !Array.isArray(value)) {
    const object = schema instanceof z.ZodObject ? schema : variantOf(schema, Reflect.get(value, 'kind'));
    if (object === undefined) return value;
    const read: Record<string, unknown> = {};
    for (const [key, part] of partsOf(object))
      read[key] = visit(part, Reflect.get(value, key), path === '' ? key : `${path}.${key}`);
    return read;
  }
  if (schema instanceof z.ZodArray && Array.isArray(value)) {
    return value.map((item: { id: string }) => visit(schema.element, item, `${path}.${item.id}`));
  }
  const field = fieldOf(schema);
  if (field?.kind === 'quantity' && typeof value === 'number')
    return { value: toSI(value, field.unit), from: `field:${path}` };
  return value;
}

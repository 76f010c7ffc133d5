// Any valid design, made from the schema itself, for properties that must hold for every document.
import fc from 'fast-check';
import { z } from 'zod';
import { type Design, design } from '@/lib/design/document';
import { fieldOf, type LeafField, shapesOf } from '@/lib/quantity/field';

/** Documents with every field anywhere in its range, unknown where it may be, and 1 to 8 stages with their own ids. */
export const anyDesign: fc.Arbitrary<Design> = anyOf(design)
  .map((made) => design.safeParse(made))
  .filter((parsed) => parsed.success)
  .map((parsed) => parsed.data as Design);

/** Any value that a field may hold. */
function anyValue(field: LeafField): fc.Arbitrary<number | string | boolean | null> {
  switch (field.kind) {
    case 'quantity': {
      const number = field.whole
        ? fc.integer({ min: field.min, max: field.max })
        : fc.double({ min: field.min, max: field.max, noNaN: true }).map((v) => (v === 0 ? 0 : v));
      return field.unknown ? fc.oneof({ weight: 4, arbitrary: number }, fc.constant(null)) : number;
    }
    case 'choice': {
      const key = fc.constantFrom(...Object.keys(field.options));
      return field.unknown ? fc.oneof({ weight: 4, arbitrary: key }, fc.constant(null)) : key;
    }
    case 'flag':
      return fc.boolean();
    case 'text':
      return fc.string({ maxLength: Math.min(field.max, 12) }).filter((t) => !/[\p{Cc}\p{Cs}]/u.test(t));
  }
}

function anyOf(schema: z.core.$ZodType): fc.Arbitrary<unknown> {
  const field = fieldOf(schema);
  if (schema instanceof z.ZodLiteral) return fc.constant([...schema.values][0]);
  if (field?.kind === 'variants') return fc.oneof(...shapesOf(schema).map(anyOf));
  if (field !== undefined && field.kind !== 'part' && field.kind !== 'list') return anyValue(field);
  if (schema instanceof z.ZodObject) {
    return fc.record(
      Object.fromEntries(Object.entries(schema.shape).map(([key, child]) => [key, anyOf(child)])),
    );
  }
  if (schema instanceof z.ZodArray && field?.kind === 'list') {
    const id = (item: unknown) => (item as { id: string }).id;
    return fc.uniqueArray(anyOf(schema.element), {
      minLength: field.min,
      maxLength: field.max,
      selector: id,
    });
  }
  return fc.stringMatching(/^[a-z0-9]{2,12}$/);
}

// What a coupon test may be of, as a form offers and reads it.

import type { z } from 'zod';
import { coupons } from '@/lib/design/parts/coupons';
import { fieldOf } from '@/lib/quantity/field';

const { material, property } = coupons.element.shape;

export const couponChoices = {
  materials: optionsOf(material),
  properties: optionsOf(property),
  material: (text: string) => taken(material, text),
  property: (text: string) => taken(property, text),
} as const;

/** Key → as shown, of a choice of the document. */
function optionsOf(schema: z.ZodType): Readonly<Record<string, string>> {
  const field = fieldOf(schema);
  if (field?.kind !== 'choice') throw new Error('A coupon is of one of a list.');
  return field.options;
}

function taken<S extends z.ZodType>(schema: S, text: string): z.output<S> | undefined {
  const read = schema.safeParse(text);
  return read.success ? read.data : undefined;
}

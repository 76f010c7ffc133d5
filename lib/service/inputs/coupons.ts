// Inputs about coupon tests: typed as into any field of a design, with its units, ranges and sentences.
import { z } from 'zod';
import { takeText } from '@/lib/design/edit';
import { coupons } from '@/lib/design/parts/coupons';
import { fieldOf } from '@/lib/quantity/field';
import { clubCode, id, line, prose } from './terms';

const { material, property, mean, deviation, count } = coupons.element.shape;

export const couponTests = z.object({ club: clubCode });

/** Text as typed → a number of the field, or the sentence that says what is wrong with it. */
function typed(schema: z.ZodNumber) {
  const field = fieldOf(schema);
  if (field?.kind !== 'quantity') throw new Error('Only a quantity is typed here.');
  return z
    .string()
    .max(400)
    .transform((text, ctx) => {
      const taken = takeText(text, field);
      if (taken.ok && typeof taken.value === 'number') return taken.value;
      ctx.addIssue(taken.ok ? `${field.label} is needed.` : taken.problem);
      return z.NEVER;
    });
}

export const enterCouponTest = z.object({
  club: clubCode,
  material,
  property,
  mean: typed(mean),
  deviation: typed(deviation),
  count: typed(count),
  process: line('Printer, settings, date', 160),
});

export const withdrawCouponTest = z.object({
  club: clubCode,
  testId: id,
  reason: prose('The reason', 10, 500),
});

'use server';
import { revalidatePath } from 'next/cache';
import { addresses } from '@/app/_parts/addresses';
import { type FormState, formState, text } from '@/app/_parts/answer';
import { couponChoices } from '@/lib/service/coupons/choices';
import { enterCouponTest, withdrawCouponTest } from '@/lib/service/coupons/coupon-tests';
import { currentViewer } from '@/lib/service/sign-in/page-session';

/** Enters a test; from then on every draft of the club is worked with it. */
export async function enterTest(_: FormState, form: FormData): Promise<FormState> {
  const club = text(form, 'club');
  const material = couponChoices.material(text(form, 'material'));
  const property = couponChoices.property(text(form, 'property'));
  if (material === undefined || property === undefined) return { failure: 'Choose material and property.' };
  const [mean, deviation, count] = [text(form, 'mean'), text(form, 'deviation'), text(form, 'count')];
  const input = { club, material, property, mean, deviation, count, process: text(form, 'process') };
  const result = await enterCouponTest(await currentViewer(), input);
  if (!result.ok) return formState(result.error, form);
  revalidatePath(addresses.coupons(club));
  return {
    done: 'Entered. Drafts of the club are worked with it from now on; published revisions stay as they are.',
  };
}

/** Withdraws a test with a reason; it stays in the list, struck out. */
export async function withdrawTest(_: FormState, form: FormData): Promise<FormState> {
  const [club, testId, reason] = [text(form, 'club'), text(form, 'testId'), text(form, 'reason')];
  const result = await withdrawCouponTest(await currentViewer(), { club, testId, reason });
  if (!result.ok) return formState(result.error, form);
  revalidatePath(addresses.coupons(club));
  return {};
}

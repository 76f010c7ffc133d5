'use server';
import { redirect } from 'next/navigation';
import { addresses } from '@/app/_parts/addresses';
import { type FormState, formState, text } from '@/app/_parts/answer';
import { newDesign } from '@/lib/service/designs/new-design';
import { currentViewer } from '@/lib/service/sign-in/page-session';

/** Starts a design from a starter and opens its draft. */
export async function startDesign(_: FormState, form: FormData): Promise<FormState> {
  const [club, starter, title] = [text(form, 'club'), text(form, 'starter'), text(form, 'title')];
  const result = await newDesign(await currentViewer(), { club, starter, title });
  if (!result.ok) return formState(result.error, form);
  redirect(addresses.draft(result.value.number));
}

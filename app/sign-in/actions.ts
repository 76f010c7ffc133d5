'use server';
import { redirect } from 'next/navigation';
import { addresses } from '@/app/_parts/addresses';
import { type FormState, formState, text } from '@/app/_parts/answer';
import { addressOf, startSession } from '@/lib/service/sign-in/page-session';
import { signIn } from '@/lib/service/sign-in/sign-in';

/** Checks e-mail and password and starts a session on this device. */
export async function enter(_: FormState, form: FormData): Promise<FormState> {
  const result = await signIn({
    email: text(form, 'email'),
    password: text(form, 'password'),
    address: await addressOf(),
  });
  if (!result.ok) return formState(result.error, form);
  await startSession(result.value);
  redirect(addresses.home);
}

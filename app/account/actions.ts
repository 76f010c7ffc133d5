'use server';
import { redirect } from 'next/navigation';
import { addresses } from '@/app/_parts/addresses';
import { type FormState, formState, text } from '@/app/_parts/answer';
import { changePassword } from '@/lib/service/sign-in/change-password';
import { currentViewer, endSession, startSession } from '@/lib/service/sign-in/page-session';
import { signOutEverywhere } from '@/lib/service/sign-in/sign-out';

/** Changes the password; every session but this one ends. */
export async function newPassword(_: FormState, form: FormData): Promise<FormState> {
  const result = await changePassword(await currentViewer(), {
    current: text(form, 'current'),
    next: text(form, 'next'),
  });
  if (!result.ok) return formState(result.error, form);
  await startSession(result.value);
  return { done: 'Changed. Every other session has ended.' };
}

/** Ends every session of the viewer. */
export async function leaveEverywhere(_: FormState, form: FormData): Promise<FormState> {
  const result = await signOutEverywhere(await currentViewer());
  if (!result.ok) return formState(result.error, form);
  await endSession();
  redirect(addresses.signIn);
}

'use server';
import { redirect } from 'next/navigation';
import { addresses } from '@/app/_parts/addresses';
import { type FormState, formState, text } from '@/app/_parts/answer';
import { invitationByToken, join } from '@/lib/service/members/join';
import { addressOf, startSession } from '@/lib/service/sign-in/page-session';

/** Takes the invitation: makes the account where there is none, adds the membership, and signs in. */
export async function joinClub(_: FormState, form: FormData): Promise<FormState> {
  const [token, address] = [text(form, 'token'), await addressOf()];
  const offer = await invitationByToken({ token, address });
  // People with an account are not asked their name again.
  const name = offer.ok && offer.value.known ? 'member' : text(form, 'name');
  const result = await join({ token, address, name, password: text(form, 'password') });
  if (!result.ok) return formState(result.error, form);
  await startSession(result.value);
  redirect(addresses.shelf(result.value.clubCode));
}

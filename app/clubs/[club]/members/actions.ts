'use server';
import { revalidatePath } from 'next/cache';
import { headers } from 'next/headers';
import { addresses } from '@/app/_parts/addresses';
import { type FormState, formState, text } from '@/app/_parts/answer';
import { changeRole, endMembership } from '@/lib/service/members/change-member';
import { invite, withdrawInvitation } from '@/lib/service/members/invite';
import { roleNamed } from '@/lib/service/members/role-words';
import { currentViewer } from '@/lib/service/sign-in/page-session';

/** Makes an invitation and shows its address once; only its hash is kept. */
export async function inviteMember(_: FormState, form: FormData): Promise<FormState> {
  const [club, email, role] = [text(form, 'club'), text(form, 'email'), roleNamed(text(form, 'role'))];
  if (role === undefined) return { failure: 'Choose a role.' };
  const result = await invite(await currentViewer(), { club, email, role });
  if (!result.ok) return formState(result.error, form);
  revalidatePath(addresses.members(club));
  const sent = await headers();
  const origin = `${sent.get('x-forwarded-proto') ?? 'http'}://${sent.get('host') ?? ''}`;
  return { done: `Invitation for ${email}, shown only now: ${origin}${addresses.join(result.value.token)}` };
}

/** Takes an open invitation back. */
export async function withdrawInvitationOf(_: FormState, form: FormData): Promise<FormState> {
  const [club, invitationId] = [text(form, 'club'), text(form, 'invitationId')];
  const result = await withdrawInvitation(await currentViewer(), { club, invitationId });
  if (!result.ok) return formState(result.error, form);
  revalidatePath(addresses.members(club));
  return {};
}

/** Another role, or the end of the membership. */
export async function changeMember(_: FormState, form: FormData): Promise<FormState> {
  const [club, userId, chosen] = [text(form, 'club'), text(form, 'userId'), text(form, 'role')];
  const [viewer, role] = [await currentViewer(), roleNamed(chosen)];
  if (role === undefined && chosen !== 'none') return { failure: 'Choose a role.' };
  const result =
    role === undefined
      ? await endMembership(viewer, { club, userId })
      : await changeRole(viewer, { club, userId, role });
  if (!result.ok) return formState(result.error, form);
  revalidatePath(addresses.members(club));
  return { done: 'Changed.' };
}

'use server';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { addresses } from '@/app/_parts/addresses';
import { type FormState, formState, text } from '@/app/_parts/answer';
import { disposeFinding } from '@/lib/service/findings/dispose-finding';
import { reviseAssessment } from '@/lib/service/publishing/revise-assessment';
import type { Result } from '@/lib/service/result';
import { currentViewer } from '@/lib/service/sign-in/page-session';
import { withdrawSignature } from '@/lib/service/signing/withdraw-signature';
import { reopenThread, reply, resolveThread } from '@/lib/service/threads/answer';
import { startThread } from '@/lib/service/threads/start-thread';

type Input<F extends (viewer: never, input: never) => unknown> = Parameters<F>[1];

/** The page is drawn again with what changed; a refusal is shown at the form. */
function after(result: Result<unknown>, form: FormData, done: string): FormState {
  if (!result.ok) return formState(result.error, form);
  revalidatePath('/designs', 'layout');
  return { done };
}

/** Opens a thread and goes back to the sheet at it. */
export async function remark(_: FormState, form: FormData): Promise<FormState> {
  const [design, letter, at] = [text(form, 'design'), text(form, 'letter'), text(form, 'anchor')];
  const cut = at.indexOf(':');
  // The use case checks the kind; a form may hold anything.
  const kind = at.slice(0, cut) as Input<typeof startThread>['anchor']['kind'];
  const anchor = { kind, path: at.slice(cut + 1) };
  const result = await startThread(await currentViewer(), {
    design,
    letter,
    anchor,
    text: text(form, 'text'),
  });
  if (!result.ok) return formState(result.error, form);
  redirect(`${addresses.revision(design, letter)}#thread-${result.value.number}`);
}

/** Adds a reply. */
export async function answer(_: FormState, form: FormData): Promise<FormState> {
  const result = await reply(await currentViewer(), {
    threadId: text(form, 'threadId'),
    text: text(form, 'text'),
  });
  return after(result, form, 'Reply added.');
}

/** Resolves or reopens a thread. */
export async function settle(_: FormState, form: FormData): Promise<FormState> {
  const [viewer, threadId] = [await currentViewer(), text(form, 'threadId')];
  if (text(form, 'to') === 'resolved')
    return after(await resolveThread(viewer, { threadId }), form, 'Resolved.');
  const result = await reopenThread(viewer, { threadId, text: text(form, 'text') });
  if (!result.ok) return formState(result.error, form);
  redirect(
    `${addresses.revision(text(form, 'design'), text(form, 'letter'))}#thread-${text(form, 'number')}`,
  );
}

/** Decides about a finding. */
export async function dispose(_: FormState, form: FormData): Promise<FormState> {
  const input = {
    design: text(form, 'design'),
    letter: text(form, 'letter'),
    findingKey: text(form, 'findingKey'),
    fingerprint: text(form, 'fingerprint'),
    // The use case checks the kind; a form may hold anything.
    kind: text(form, 'kind') as Input<typeof disposeFinding>['kind'],
    reason: text(form, 'reason'),
  };
  const result = await disposeFinding(await currentViewer(), input);
  if (!result.ok) return formState(result.error, form);
  const place = input.findingKey.startsWith('check:') ? 'hold-points' : `finding-${input.findingKey}`;
  redirect(`${addresses.revision(input.design, input.letter)}#${place}`);
}

/** Takes a signature back. */
export async function withdraw(_: FormState, form: FormData): Promise<FormState> {
  const input = { signOffId: text(form, 'signOffId'), reason: text(form, 'reason') };
  const result = await withdrawSignature(await currentViewer(), input);
  if (!result.ok) return formState(result.error, form);
  redirect(`${addresses.revision(text(form, 'design'), text(form, 'letter'))}#hold-points`);
}

/** Assesses the revision anew, beside its old assessment. */
export async function reassess(_: FormState, form: FormData): Promise<FormState> {
  const input = { design: text(form, 'design'), letter: text(form, 'letter') };
  return after(await reviseAssessment(await currentViewer(), input), form, 'Assessed.');
}

'use server';
import { redirect } from 'next/navigation';
import { addresses } from '@/app/_parts/addresses';
import { type FormState, formState, text } from '@/app/_parts/answer';
import { currentViewer } from '@/lib/service/sign-in/page-session';
import { sign } from '@/lib/service/signing/sign';

/** Signs for what was shown; refused when anything of it changed meanwhile. */
export async function signHere(_: FormState, form: FormData): Promise<FormState> {
  const [design, letter] = [text(form, 'design'), text(form, 'letter')];
  const result = await sign(await currentViewer(), {
    design,
    letter,
    // The use case checks the hold point; a form may hold anything.
    holdPoint: text(form, 'holdPoint') as Parameters<typeof sign>[1]['holdPoint'],
    password: text(form, 'password'),
    seenDocumentHash: text(form, 'seenDocumentHash'),
    seenAssessmentHash: text(form, 'seenAssessmentHash'),
    meaningVersion: Number(text(form, 'meaningVersion')),
  });
  if (!result.ok) return formState(result.error, form);
  redirect(`${addresses.revision(design, letter)}#hold-points`);
}

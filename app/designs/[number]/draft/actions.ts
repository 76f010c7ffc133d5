'use server';
import { redirect } from 'next/navigation';
import { addresses } from '@/app/_parts/addresses';
import { type FormState, formState, text } from '@/app/_parts/answer';
import { editsOfForm } from '@/lib/preview/rows';
import { openDraft } from '@/lib/service/drafts/open-draft';
import { saveDraft } from '@/lib/service/drafts/save-draft';
import { replaceDraftFromRevision } from '@/lib/service/drafts/start-anew';
import { publish } from '@/lib/service/publishing/publish';
import { currentViewer } from '@/lib/service/sign-in/page-session';

/** Saves the whole form at once, for browsers without script. */
export async function saveForm(form: FormData): Promise<void> {
  const [design, baseVersion] = [text(form, 'design'), Number(text(form, 'baseVersion'))];
  const viewer = await currentViewer();
  const opened = await openDraft(viewer, { design });
  if (opened.ok) {
    const texts = new Map(
      [...form].flatMap(([name, value]) => (typeof value === 'string' ? [[name, value] as const] : [])),
    );
    const edits = editsOfForm(opened.value.content, texts);
    if (edits.length > 0) await saveDraft(viewer, { design, baseVersion, edits });
  }
  redirect(addresses.draft(design));
}

/** Publishes the draft as it stands on the server. */
export async function publishDraft(_: FormState, form: FormData): Promise<FormState> {
  const [design, changeNote] = [text(form, 'design'), text(form, 'changeNote')];
  const viewer = await currentViewer();
  const opened = await openDraft(viewer, { design });
  if (!opened.ok) return formState(opened.error, form);
  const result = await publish(viewer, { design, baseVersion: opened.value.version, changeNote });
  if (!result.ok) return formState(result.error, form);
  redirect(addresses.revision(design, result.value.letter));
}

/** Puts the draft back to what a revision says; what was in it is lost, and the page asked for that. */
export async function startAnew(_: FormState, form: FormData): Promise<FormState> {
  const [design, letter, baseVersion] = [
    text(form, 'design'),
    text(form, 'letter'),
    Number(text(form, 'baseVersion')),
  ];
  const result = await replaceDraftFromRevision(await currentViewer(), { design, letter, baseVersion });
  if (!result.ok) return formState(result.error, form);
  redirect(`${addresses.draft(design)}?from=${letter}`);
}

'use server';
import { redirect } from 'next/navigation';
import { z } from 'zod';
import { addresses } from '@/app/_parts/addresses';
import { type FormState, formState, text } from '@/app/_parts/answer';
import type { Edit } from '@/lib/design/edit';
import { editsOfForm } from '@/lib/preview/rows';
import { saveDraft } from '@/lib/service/drafts/save-draft';
import { replaceDraftFromRevision } from '@/lib/service/drafts/start-anew';
import { tell } from '@/lib/service/failures';
import { publish } from '@/lib/service/publishing/publish';
import { currentViewer } from '@/lib/service/sign-in/page-session';
import type { DraftStale } from '@/lib/service/views/draft';

/** What a form that was not saved shows: why, and the edits that it would have made. */
export interface FormSaved {
  readonly failure: { readonly title: string; readonly sentence: string } | null;
  readonly edits: readonly Edit[];
}

/** Saves the whole form at once, for browsers without script. */
export async function saveForm(_: FormSaved, form: FormData): Promise<FormSaved> {
  const [design, baseVersion] = [text(form, 'design'), Number(text(form, 'baseVersion'))];
  const posted = new Map(
    [...form].flatMap(([name, value]) => (typeof value === 'string' ? [[name, value] as const] : [])),
  );
  const edits = editsOfForm(openedWith(text(form, 'opened')), posted);
  if (edits.length === 0) redirect(addresses.draft(design));
  const result = await saveDraft(await currentViewer(), { design, baseVersion, edits });
  if (result.ok) redirect(addresses.draft(design));
  const { sentence } = tell(result.error);
  if (result.error.code !== 'draft.stale') return { failure: { title: 'Not saved.', sentence }, edits };
  const { updatedBy } = result.error.detail as DraftStale;
  return {
    failure: {
      title: `${updatedBy.name} saved this draft first.`,
      sentence:
        'Your edits are not saved yet; they stand in the form on top of theirs. Save it again to keep both.',
    },
    edits,
  };
}

/** The texts that the form was opened with, as it sent them back. */
function openedWith(json: string): Record<string, string> {
  try {
    const read = z.record(z.string(), z.string()).safeParse(JSON.parse(json));
    return read.success ? read.data : {};
  } catch {
    return {};
  }
}

/** Publishes the draft as the page showed it: what someone else saved since is not published unseen. */
export async function publishDraft(_: FormState, form: FormData): Promise<FormState> {
  const [design, changeNote] = [text(form, 'design'), text(form, 'changeNote')];
  const baseVersion = Number(text(form, 'baseVersion'));
  const result = await publish(await currentViewer(), { design, baseVersion, changeNote });
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

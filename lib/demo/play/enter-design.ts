// Enters a demo design and its revisions as a person would: a starter, edits of its draft, publishing.
import type { Edit } from '@/lib/design/edit';
import { newDesign } from '@/lib/service/designs/new-design';
import { openDraft } from '@/lib/service/drafts/open-draft';
import { saveDraft } from '@/lib/service/drafts/save-draft';
import { publish } from '@/lib/service/publishing/publish';
import type { Viewer } from '@/lib/service/viewer';
import type { DemoRevision } from '../designs/demo-design';
import type { DemoEntry } from '../designs/registry';
import { club } from '../people';
import { taken } from './answer';
import { editsBetween } from './edits-between';
import type { Cast } from './people';

/** A new design whose draft is the base; returns its number. */
export async function enterDesign(cast: Cast, { design, starter }: DemoEntry): Promise<string> {
  const author = cast[design.author];
  const { number } = await taken(
    'a new design',
    newDesign(author, { club: club.code, starter, title: design.title }),
  );
  const draft = await taken('opening the draft', openDraft(author, { design: number }));
  await save(author, number, editsBetween(draft.content.document, design.base));
  return number;
}

/** Edits the draft and publishes it; returns the letter. */
export async function publishRevision(cast: Cast, number: string, revision: DemoRevision): Promise<string> {
  const author = cast[revision.author];
  const baseVersion = await save(author, number, revision.edits);
  const { changeNote } = revision;
  const { letter } = await taken('publishing', publish(author, { design: number, baseVersion, changeNote }));
  return letter;
}

const atOnce = 100;

/** Saves edits in the portions that one save takes; returns the version of the draft. */
export async function save(author: Viewer, number: string, edits: readonly Edit[]): Promise<number> {
  let { version } = await taken('opening the draft', openDraft(author, { design: number }));
  for (let i = 0; i < edits.length; i += atOnce) {
    const portion = edits.slice(i, i + atOnce);
    const saved = await taken(
      'saving the draft',
      saveDraft(author, { design: number, baseVersion: version, edits: portion }),
    );
    const refused = saved.outcomes.findIndex((outcome) => outcome !== null);
    if (refused >= 0)
      throw new Error(
        `The demo club: ${JSON.stringify(portion[refused])} was not taken. ${saved.outcomes[refused]}`,
      );
    version = saved.version;
  }
  return version;
}

// A demo design: a first document and the edits that made each later revision of it.
import type { Design } from '@/lib/design/document';
import { applyEdit, type DraftContent, type Edit } from '@/lib/design/edit';
import type { PersonKey } from '../people';

export interface DemoRevision {
  readonly author: PersonKey;
  readonly changeNote: string;
  /** From the revision before; from the base for the first. */
  readonly edits: readonly Edit[];
}

export interface DemoDesign {
  readonly title: string;
  /** Who entered it. */
  readonly author: PersonKey;
  readonly base: Design;
  readonly revisions: readonly DemoRevision[];
  /** Edits of the draft since the last revision; none leaves the draft as published. */
  readonly ahead: { readonly author: PersonKey; readonly edits: readonly Edit[] } | null;
}

/** The documents as published, first to last, and that of the draft. Throws when an edit is not taken. */
export function documentsOf(demo: DemoDesign): { readonly published: Design[]; readonly draft: Design } {
  let content: DraftContent = { document: demo.base, pending: {} };
  const published = demo.revisions.map(({ edits }) => {
    content = edited(content, edits);
    return content.document;
  });
  return { published, draft: edited(content, demo.ahead?.edits ?? []).document };
}

function edited(content: DraftContent, edits: readonly Edit[]): DraftContent {
  return edits.reduce((before, edit) => {
    const { content: after, problem } = applyEdit(before, edit);
    if (problem !== null) throw new Error(`${JSON.stringify(edit)}: ${problem}`);
    return after;
  }, content);
}

/** Shorthand: one typed or chosen field. */
export function set(path: string, text: string): Edit {
  return { do: 'set', path, text };
}

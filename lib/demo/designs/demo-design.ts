// A demo design: a first document and the edits that made each later revision of it.

import { withCoupons } from '@/lib/design/coupons';
import type { Design } from '@/lib/design/document';
import { applyEdit, type DraftContent, type Edit } from '@/lib/design/edit';
import { clubCoupons } from '../coupons';
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
  /** The first revision that was worked with the club’s coupon tests, counted from 0; null when all came before them. */
  readonly testedFrom: number | null;
  /** Edits of the draft since the last revision; none leaves the draft as published. */
  readonly ahead: { readonly author: PersonKey; readonly edits: readonly Edit[] } | null;
}

/** The documents as published, first to last, and that of the draft. Throws when an edit is not taken. */
export function documentsOf(demo: DemoDesign): { readonly published: Design[]; readonly draft: Design } {
  let content: DraftContent = { document: demo.base, pending: {} };
  const from = demo.testedFrom ?? demo.revisions.length;
  const published = demo.revisions.map(({ edits }, i) => {
    content = edited(content, edits);
    if (i >= from) content = { ...content, document: withCoupons(content.document, clubCoupons) };
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

type Described = { readonly [field: string]: string | number | boolean | null | Described };

/** Every field of a part as it is described, in its order; a kind stands before the fields that it brings. */
export function describe(path: string, part: Described): Edit[] {
  return Object.entries(part).flatMap(([key, value]): Edit[] => {
    const at = `${path}.${key}`;
    if (typeof value === 'object' && value !== null) return describe(at, value);
    return [set(at, value === null ? '' : value === true ? 'yes' : value === false ? 'no' : String(value))];
  });
}

/** Shorthand: one typed or chosen field. */
export function set(path: string, text: string): Edit {
  return { do: 'set', path, text };
}

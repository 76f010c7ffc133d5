// Unconfirmed edits kept on this device, so that a reload or a lost connection loses nothing.
import { z } from 'zod';
import { type Edit, edit } from '@/lib/design/edit';

interface Shelf {
  getItem(key: string): string | null;
  setItem(key: string, value: string): void;
  removeItem(key: string): void;
}

const keyOf = (draft: string) => `pawl.draft.${draft}`;

/** Puts the unconfirmed edits of a draft by; an empty list clears them. False when the device refuses. */
export function keepEdits(shelf: Shelf, draft: string, edits: readonly Edit[]): boolean {
  try {
    if (edits.length === 0) shelf.removeItem(keyOf(draft));
    else shelf.setItem(keyOf(draft), JSON.stringify(edits));
    return true;
  } catch {
    // A full or forbidden store is told to the person by the caller.
    return false;
  }
}

/** The edits put by for a draft; an empty list when there are none or they cannot be read. */
export function keptEdits(shelf: Shelf, draft: string): readonly Edit[] {
  try {
    const kept = z.array(edit).safeParse(JSON.parse(shelf.getItem(keyOf(draft)) ?? '[]'));
    return kept.success ? kept.data : [];
  } catch {
    return [];
  }
}

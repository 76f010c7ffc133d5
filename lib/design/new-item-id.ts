// New ids for the items of a list, stages for one: short, without letters that look alike, and not yet used in it.
import { customAlphabet } from 'nanoid';

const short = customAlphabet('abcdefghjkmnpqrstuvwxyz23456789', 4);

/** An id that none of `taken` has. */
export function newItemId(taken: readonly string[]): string {
  for (;;) {
    const id = short();
    if (!taken.includes(id)) return id;
  }
}

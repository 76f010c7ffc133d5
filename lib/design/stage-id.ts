// New ids for stages: short, without letters that look alike, and not yet used in the train.
import { customAlphabet } from 'nanoid';

const short = customAlphabet('abcdefghjkmnpqrstuvwxyz23456789', 4);

/** An id that none of `taken` has. */
export function newStageId(taken: readonly string[]): string {
  for (;;) {
    const id = short();
    if (!taken.includes(id)) return id;
  }
}

// Paths of a document in words, for links and headings.
import type { Design } from '@/lib/design/document';
import { type PartAt, treeOf } from '@/lib/design/walk';

/** A field in words, e.g. `Stage 2, pinion, teeth`; the path itself when there is no such field. */
export function fieldWords(document: Design, path: string): string {
  return wordsOf(document).get(path) ?? path;
}

/** A part, stage or gear in words, e.g. `Stage 2, pinion`. */
export function partWords(document: Design, path: string): string {
  return wordsOf(document).get(path) ?? path;
}

/** Labels from the outside in as one place: `Stage 2, shaft behind the stage, bearing A`. */
export function placeWords(trail: readonly string[]): string {
  const places = trail[0] === 'Train' && trail.length > 1 ? trail.slice(1) : trail;
  return places.map((place, i) => (i === 0 ? place : lower(place))).join(', ');
}

const known = new WeakMap<Design, Map<string, string>>();

function wordsOf(document: Design): Map<string, string> {
  const found = known.get(document);
  if (found !== undefined) return found;
  const words = new Map<string, string>();
  for (const part of treeOf(document)) tell(part, words);
  known.set(document, words);
  return words;
}

function tell({ path, trail, fields, parts, lists }: PartAt, words: Map<string, string>): void {
  const place = placeWords(trail);
  words.set(path, place);
  for (const at of fields) words.set(at.path, `${place}, ${lower(at.field.label)}`);
  for (const inner of parts) tell(inner, words);
  for (const list of lists) for (const item of list.items) tell(item, words);
}

function lower(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1);
}

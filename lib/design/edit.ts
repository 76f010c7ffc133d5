// Editing a draft: typed text goes in, the document stays valid, and text that does not fit yet is kept beside it.
import { z } from 'zod';
import {
  choiceSentence,
  fieldOf,
  type LeafField,
  type ListField,
  textProblem,
  variantOf,
} from '@/lib/quantity/field';
import { parseQuantity } from '@/lib/quantity/parse';
import type { Design } from './document';
import { itemId } from './parts/item-id';
import { fieldAt, leafAt, schemaAt, valueAt, withValue } from './path';
import { itemStarts, type ListPath, stageStarts } from './starts';
import type { FieldValue } from './walk';

/** What a draft holds: a document that is always valid, and what was typed that is not yet part of it. */
export interface DraftContent {
  readonly document: Design;
  /** Path → text as typed, for fields whose text could not be taken. Nothing typed is ever lost. */
  readonly pending: Readonly<Record<string, string>>;
}

/** The database cannot hold the null character nor half a surrogate pair, not even in text that waits. */
const text = z
  .string()
  .max(400)
  .refine((t) => !t.includes('\0') && !/\p{Cs}/u.test(t), 'This text has characters that cannot be kept.');

const listPath = z.enum(Object.keys(itemStarts) as [ListPath, ...ListPath[]]);

/** One edit as it travels from the browser; paths and texts are only bounded here, `applyEdit` judges them. */
export const edit = z.discriminatedUnion('do', [
  z.strictObject({ do: z.literal('set'), path: z.string().max(200), text }),
  /** A new item after another or first, like another or as `itemStarts` has it. */
  z.strictObject({
    do: z.literal('insert'),
    list: listPath,
    id: itemId,
    after: z.nullable(itemId),
    like: z.nullable(itemId),
  }),
  z.strictObject({ do: z.literal('remove'), list: listPath, id: itemId }),
  z.strictObject({
    do: z.literal('move'),
    list: listPath,
    id: itemId,
    by: z.union([z.literal(-1), z.literal(1)]),
  }),
]);

export type Edit = z.infer<typeof edit>;

export interface Edited {
  readonly content: DraftContent;
  /** A sentence when the edit could not be taken; for `set`, the text is then in `pending`. */
  readonly problem: string | null;
}

/** Applies one edit. Never throws on what a person may send: a wrong path or value comes back as a sentence. */
export function applyEdit(content: DraftContent, edit: Edit): Edited {
  switch (edit.do) {
    case 'set':
      return setField(content, edit.path, edit.text);
    case 'insert':
      return insertItem(content, edit);
    case 'remove':
      return removeItem(content, edit);
    case 'move':
      return moveItem(content, edit);
  }
}

/** The sentence for each text that is waiting: path → problem. */
export function pendingProblems(content: DraftContent): Record<string, string> {
  const problems: Record<string, string> = {};
  for (const [path, text] of Object.entries(content.pending)) {
    const field = leafAt(path);
    if (field === undefined) continue;
    const taken = takeText(text, field);
    if (!taken.ok) problems[path] = taken.problem;
  }
  return problems;
}

type Taken =
  | { readonly ok: true; readonly value: FieldValue }
  | { readonly ok: false; readonly problem: string };

/** Typed or chosen text → a value of the field, or the sentence to show. */
export function takeText(text: string, field: LeafField): Taken {
  switch (field.kind) {
    case 'quantity':
      return parseQuantity(text, field);
    case 'choice':
      if (text === '' && field.unknown) return { ok: true, value: null };
      if (Object.hasOwn(field.options, text)) return { ok: true, value: text };
      return { ok: false, problem: choiceSentence(field.label, field.options) };
    case 'flag':
      if (text === 'yes' || text === 'no') return { ok: true, value: text === 'yes' };
      return { ok: false, problem: `${field.label} must be yes or no.` };
    case 'text': {
      const problem = textProblem(text, field.label, field.max);
      return problem === null ? { ok: true, value: text } : { ok: false, problem };
    }
  }
}

function setField(content: DraftContent, path: string, text: string): Edited {
  const field = leafAt(path);
  if (field === undefined || valueAt(content.document, path) === undefined) {
    return { content, problem: 'This field is no longer part of the design.' };
  }
  const taken = takeText(text, field);
  if (!taken.ok)
    return { content: { ...content, pending: { ...content.pending, [path]: text } }, problem: taken.problem };
  const { [path]: _taken, ...pending } = content.pending;
  const document = withTaken(content.document, path, taken.value);
  return { content: { document, pending: stillThere(document, pending) }, problem: null };
}

/** The document with a value set; a new kind gives its part the shape of that kind, and keeps what both shapes have. */
function withTaken(document: Design, path: string, value: FieldValue): Design {
  const part = path.endsWith('.kind') ? path.slice(0, -'.kind'.length) : null;
  const schema = part === null ? undefined : schemaAt(part);
  const shape = schema === undefined ? undefined : variantOf(schema, value);
  if (part === null || shape === undefined || typeof value !== 'string')
    return withValue(document, path, value);
  return withValue(document, part, reshaped(shape, value, valueAt(document, part)));
}

function reshaped(shape: z.ZodObject, kind: string, old: unknown): Record<string, unknown> {
  const start: unknown = Reflect.get(stageStarts, kind);
  const made: Record<string, unknown> = {};
  for (const [key, field] of Object.entries<z.core.$ZodType>(shape.shape)) {
    const kept: unknown = key === 'kind' ? kind : Reflect.get(Object(old), key);
    const fits = kept !== undefined && z.safeParse(field, kept).success;
    const begun: unknown = Reflect.get(Object(start), key);
    made[key] = fits ? kept : begun === undefined ? blank(field) : begun;
  }
  return made;
}

/** A field that nothing is known of: the first kind of a part with several, which has no fields, else null. */
function blank(schema: z.core.$ZodType): unknown {
  const field = fieldOf(schema);
  return field?.kind === 'variants' ? { kind: Object.keys(field.options)[0] } : null;
}

/** The texts that wait at fields the document still has. */
function stillThere(
  document: Design,
  pending: Readonly<Record<string, string>>,
): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(pending).filter(([path]) => valueAt(document, path) !== undefined),
  );
}

type Item = { readonly id: string };
type Of<D extends Edit['do']> = Extract<Edit, { readonly do: D }>;

/** What one item is called in sentences about the list. */
const itemWords: Readonly<Record<ListPath, string>> = { 'train.stages': 'stage', 'duty.loads': 'load' };

function listAt(
  document: Design,
  path: ListPath,
): { readonly items: readonly Item[]; readonly field: ListField } {
  const field = fieldAt(path);
  if (field?.kind !== 'list') throw new Error(`There is no list ${path}.`);
  // The list paths are those of itemStarts, each a list of items with ids.
  return { items: valueAt(document, path) as readonly Item[], field };
}

function withItems(content: DraftContent, list: ListPath, items: readonly Item[]): Edited {
  const document = withValue(content.document, list, items);
  return { content: { document, pending: stillThere(document, content.pending) }, problem: null };
}

function insertItem(content: DraftContent, { list, id, after, like }: Of<'insert'>): Edited {
  const { items, field } = listAt(content.document, list);
  const word = itemWords[list];
  const pattern = like === null ? itemStarts[list] : items.find((item) => item.id === like);
  if (pattern === undefined) return { content, problem: `The ${word} to copy is gone.` };
  if (items.length >= field.max) return { content, problem: `${field.label}: at most ${field.max}.` };
  if (items.some((item) => item.id === id)) return { content, problem: `This ${word} id cannot be used.` };
  if (after !== null && !items.some((item) => item.id === after))
    return { content, problem: `The ${word} it should follow is gone.` };
  const at = after === null ? 0 : items.findIndex((item) => item.id === after) + 1;
  return withItems(
    content,
    list,
    items.toSpliced(at, 0, { ...structuredClone(pattern), id, name: '' } as Item),
  );
}

function removeItem(content: DraftContent, { list, id }: Of<'remove'>): Edited {
  const { items, field } = listAt(content.document, list);
  const word = itemWords[list];
  if (!items.some((item) => item.id === id)) return { content, problem: `This ${word} is already gone.` };
  if (items.length <= field.min)
    return { content, problem: `${field.label}: at least ${field.min} must stay.` };
  return withItems(
    content,
    list,
    items.filter((item) => item.id !== id),
  );
}

function moveItem(content: DraftContent, { list, id, by }: Of<'move'>): Edited {
  const { items } = listAt(content.document, list);
  const from = items.findIndex((item) => item.id === id);
  const moving = items[from];
  if (moving === undefined) return { content, problem: `This ${itemWords[list]} is gone.` };
  const to = from + by;
  if (to < 0 || to >= items.length) return { content, problem: null };
  return withItems(content, list, items.toSpliced(from, 1).toSpliced(to, 0, moving));
}

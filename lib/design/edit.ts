// Editing a draft: typed text goes in, the document stays valid, and text that does not fit yet is kept beside it.
import { z } from 'zod';
import { choiceSentence, type LeafField, textProblem } from '@/lib/quantity/field';
import { parseQuantity } from '@/lib/quantity/parse';
import type { Design } from './document';
import { leafAt, valueAt, withValue } from './path';
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

const stageId = z.string().regex(/^[a-z0-9]{2,12}$/);

/** One edit as it travels from the browser; paths and texts are only bounded here, `applyEdit` judges them. */
export const edit = z.discriminatedUnion('do', [
  z.strictObject({ do: z.literal('set'), path: z.string().max(200), text }),
  z.strictObject({ do: z.literal('insertStage'), id: stageId, after: z.nullable(stageId), like: stageId }),
  z.strictObject({ do: z.literal('removeStage'), id: stageId }),
  z.strictObject({ do: z.literal('moveStage'), id: stageId, by: z.union([z.literal(-1), z.literal(1)]) }),
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
    case 'insertStage':
      return insertStage(content, edit.id, edit.after, edit.like);
    case 'removeStage':
      return removeStage(content, edit.id);
    case 'moveStage':
      return moveStage(content, edit.id, edit.by);
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
  return { content: { document: withValue(content.document, path, taken.value), pending }, problem: null };
}

function withStages(content: DraftContent, stages: Design['train']['stages']): Edited {
  const { document } = content;
  return {
    content: { ...content, document: { ...document, train: { ...document.train, stages } } },
    problem: null,
  };
}

function insertStage(content: DraftContent, id: string, after: string | null, like: string): Edited {
  const { stages } = content.document.train;
  const pattern = stages.find((s) => s.id === like);
  if (pattern === undefined) return { content, problem: 'The stage to copy is gone.' };
  if (stages.length >= 8) return { content, problem: 'A train has at most 8 stages.' };
  if (stages.some((s) => s.id === id) || !/^[a-z0-9]{2,12}$/.test(id))
    return { content, problem: 'This stage id cannot be used.' };
  if (after !== null && !stages.some((s) => s.id === after))
    return { content, problem: 'The stage it should follow is gone.' };
  const at = after === null ? 0 : stages.findIndex((s) => s.id === after) + 1;
  return withStages(content, stages.toSpliced(at, 0, { ...structuredClone(pattern), id, name: '' }));
}

function removeStage(content: DraftContent, id: string): Edited {
  const { stages } = content.document.train;
  if (!stages.some((s) => s.id === id)) return { content, problem: 'This stage is already gone.' };
  if (stages.length === 1) return { content, problem: 'A train keeps at least one stage.' };
  const gone = `train.stages.${id}.`;
  const pending = Object.fromEntries(
    Object.entries(content.pending).filter(([path]) => !path.startsWith(gone)),
  );
  return withStages(
    { ...content, pending },
    stages.filter((s) => s.id !== id),
  );
}

function moveStage(content: DraftContent, id: string, by: -1 | 1): Edited {
  const { stages } = content.document.train;
  const from = stages.findIndex((s) => s.id === id);
  const moving = stages[from];
  if (moving === undefined) return { content, problem: 'This stage is gone.' };
  const to = from + by;
  if (to < 0 || to >= stages.length) return { content, problem: null };
  return withStages(content, stages.toSpliced(from, 1).toSpliced(to, 0, moving));
}

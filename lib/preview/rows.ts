// A draft as the form shows it: parts, stages, gears and fields, each field with its text and its problem.
import { type PartKey, partKeys, parts } from '@/lib/design/document';
import { applyEdit, type DraftContent, type Edit, pendingProblems } from '@/lib/design/edit';
import { newStageId } from '@/lib/design/stage-id';
import { type FieldAt, fieldsOf } from '@/lib/design/walk';
import { fieldOf, type LeafField } from '@/lib/quantity/field';

export interface FieldRow {
  readonly path: string;
  readonly field: LeafField;
  readonly text: string;
  readonly problem: string | null;
}

export interface GroupRows {
  /** Path of the group: a part, a stage, a gear. */
  readonly path: string;
  readonly label: string;
  readonly fields: readonly FieldRow[];
}

export interface StageRows extends GroupRows {
  readonly id: string;
  readonly gears: readonly GroupRows[];
}

export interface PartRows extends GroupRows {
  readonly key: PartKey;
  readonly help: string;
  /** The stages of the train; null for every other part. */
  readonly stages: readonly StageRows[] | null;
  /** How many texts of this part do not fit yet. */
  readonly waiting: number;
}

/** The form of a draft, in the order of the power flow. */
export function rowsOf(content: DraftContent): PartRows[] {
  const problems = pendingProblems(content);
  const all = fieldsOf(content.document).map((at) => rowOf(at, content, problems));
  return partKeys.map((key) => partRows(key, all, content));
}

/** The edit that puts a new stage, alike the one before it, after that stage. */
export function insertAfter(content: DraftContent, id: string): Edit {
  const taken = content.document.train.stages.map((s) => s.id);
  return { do: 'insert', list: 'train.stages', id: newStageId(taken), after: id, like: id };
}

/** The text of every field, by path: what a form shows when it is opened. */
export function textsOf(content: DraftContent): Record<string, string> {
  return Object.fromEntries(fieldsOf(content.document).map((at) => [at.path, rowOf(at, content, {}).text]));
}

/**
 * The edits that a posted form makes: one for each field whose text is not the one the form was opened with. What others
 * saved since is no edit of the form's.
 */
export function editsOfForm(
  opened: Readonly<Record<string, string>>,
  posted: ReadonlyMap<string, string>,
): Edit[] {
  return Object.entries(opened).flatMap(([path, before]) => {
    const text = posted.get(path);
    return text === undefined || text === before ? [] : [{ do: 'set' as const, path, text }];
  });
}

/** The draft with edits on top of it. */
export function withEdits(content: DraftContent, edits: readonly Edit[]): DraftContent {
  return edits.reduce((before, edit) => applyEdit(before, edit).content, content);
}

function partRows(key: PartKey, all: readonly FieldRow[], content: DraftContent): PartRows {
  const described = fieldOf(parts[key]);
  const under = all.filter((row) => row.path.startsWith(`${key}.`));
  return {
    key,
    path: key,
    label: described?.label ?? key,
    help: described?.kind === 'part' ? described.help : '',
    fields: under.filter((row) => row.path.split('.').length === 2),
    stages: key === 'train' ? content.document.train.stages.map((s, i) => stageRows(s.id, i, under)) : null,
    waiting: under.filter((row) => row.problem !== null).length,
  };
}

function stageRows(id: string, index: number, all: readonly FieldRow[]): StageRows {
  const path = `train.stages.${id}`;
  const group = (label: string, at: string): GroupRows => {
    const depth = at.split('.').length + 1;
    const fields = all.filter((row) => row.path.startsWith(`${at}.`) && row.path.split('.').length === depth);
    return { path: at, label, fields };
  };
  const gears = [group('Pinion', `${path}.pinion`), group('Wheel', `${path}.wheel`)];
  return { ...group(`Stage ${index + 1}`, path), id, gears };
}

function rowOf(at: FieldAt, content: DraftContent, problems: Readonly<Record<string, string>>): FieldRow {
  const text = content.pending[at.path] ?? entered(at);
  return { path: at.path, field: at.field, text, problem: problems[at.path] ?? null };
}

function entered({ value }: FieldAt): string {
  if (value === null) return '';
  return typeof value === 'boolean' ? (value ? 'yes' : 'no') : String(value);
}

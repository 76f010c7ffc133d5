// Two documents laid side by side by stable ids: which fields changed, which stages came, went or moved.
import type { LeafField } from '@/lib/quantity/field';
import type { Design } from './document';
import { type FieldAt, type FieldValue, fieldsOf } from './walk';

export interface FieldChange {
  readonly path: string;
  readonly field: LeafField;
  readonly trail: readonly string[];
  readonly before: FieldValue;
  readonly after: FieldValue;
}

export interface StageChange {
  readonly id: string;
  readonly kind: 'added' | 'removed' | 'moved';
  /** Places in the power flow, counted from 1 at the motor; null where the stage is not there. */
  readonly from: number | null;
  readonly to: number | null;
}

export interface Alignment {
  readonly fields: readonly FieldChange[];
  readonly stages: readonly StageChange[];
}

/** What changed from one document to another. Fields of a stage that is only in one of them are not listed singly. */
export function align(before: Design, after: Design): Alignment {
  const old = new Map(fieldsOf(before).map((f) => [f.path, f]));
  const fields: FieldChange[] = [];
  for (const now of fieldsOf(after)) {
    const was = old.get(now.path);
    if (was !== undefined && was.value !== now.value) fields.push(changed(was, now));
  }
  return { fields, stages: stageChanges(before, after) };
}

function changed(was: FieldAt, now: FieldAt): FieldChange {
  return { path: now.path, field: now.field, trail: now.trail, before: was.value, after: now.value };
}

function stageChanges(before: Design, after: Design): StageChange[] {
  const was = before.train.stages.map((s) => s.id);
  const now = after.train.stages.map((s) => s.id);
  const stayed = now.filter((id) => was.includes(id));
  const order = was.filter((id) => now.includes(id));
  const place = (ids: readonly string[], id: string) => (ids.includes(id) ? ids.indexOf(id) + 1 : null);
  const at = (id: string) => ({ id, from: place(was, id), to: place(now, id) });
  return [
    ...was.filter((id) => !now.includes(id)).map((id) => ({ ...at(id), kind: 'removed' as const })),
    ...now.filter((id) => !was.includes(id)).map((id) => ({ ...at(id), kind: 'added' as const })),
    // A stage moved when its place among those that stayed is another; mere insertion before it moves nothing.
    ...stayed.filter((id, i) => order[i] !== id).map((id) => ({ ...at(id), kind: 'moved' as const })),
  ];
}

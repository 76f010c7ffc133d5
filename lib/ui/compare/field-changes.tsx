// What was changed in the document: old value, revision triangle, new value in a cloud.
import type { ReactNode } from 'react';
import type { ChangedField } from '@/lib/compare/comparison';
import type { StageChange } from '@/lib/design/align';
import { airy } from '../marks/airy';
import { Cloud } from '../marks/cloud';
import { RevisionTriangle } from '../marks/revision-triangle';
import { RuledTable } from '../table/ruled-table';

interface FieldChangesProps {
  readonly fields: readonly ChangedField[];
  readonly stages: readonly StageChange[];
  /** Words for the two columns, e.g. `Revision B` and `Revision C`, `Draft`. */
  readonly before: string;
  readonly after: string;
  /** Letter in the triangles; null for a draft, which has none: a star stands for it. */
  readonly letter: string | null;
  /** What a change brought about, e.g. its share in the weakest factor. */
  readonly consequence?: ((field: ChangedField) => ReactNode) | undefined;
}

/** Table of changed fields, and sentences for stages that came, went or moved. */
export function FieldChanges({ fields, stages, before, after, letter, consequence }: FieldChangesProps) {
  if (fields.length === 0 && stages.length === 0)
    return (
      <p>
        No field differs between {before} and {after}.
      </p>
    );
  return (
    <>
      {stages.map((s) => (
        <p key={s.id} className="stage-change">
          <RevisionTriangle letter={letter ?? '*'} what="changed" /> {stageWords(s)}
        </p>
      ))}
      {fields.length === 0 ? null : (
        <RuledTable
          caption={`Fields that differ between ${before} and ${after}`}
          columns={[
            { label: 'Field' },
            { label: before, kind: 'number' },
            { label: after, kind: 'number' },
            ...(consequence === undefined ? [] : [{ label: 'Consequence', kind: 'number' as const }]),
          ]}
          rows={fields.map((f) => ({
            key: f.path,
            id: `change-${f.path}`,
            cells: [
              <FieldName key="name" field={f} />,
              <span key="before">{airy(f.before)}</span>,
              <span key="after" className="change-new">
                <RevisionTriangle letter={letter ?? '*'} what="changed to" />
                <Cloud>{airy(f.after)}</Cloud>
              </span>,
              ...(consequence === undefined ? [] : [consequence(f)]),
            ],
          }))}
        />
      )}
    </>
  );
}

function FieldName({ field }: { readonly field: ChangedField }) {
  const trail = field.trail.join(', ');
  return (
    <>
      {trail === '' ? null : <span className="row-trail">{trail}: </span>}
      {field.label}
    </>
  );
}

function stageWords({ kind, from, to }: StageChange): string {
  if (kind === 'added') return `A stage was added in place ${to ?? '–'}, counted from the motor.`;
  if (kind === 'removed') return `The stage in place ${from ?? '–'}, counted from the motor, was removed.`;
  return `The stage in place ${from ?? '–'} moved to place ${to ?? '–'}.`;
}

// What was changed in the document: old value, revision triangle, new value in a cloud.
import type { ReactNode } from 'react';
import type { ChangedField, ChangedItem } from '@/lib/compare/comparison';
import { airy } from '../marks/airy';
import { Cloud } from '../marks/cloud';
import { RevisionTriangle } from '../marks/revision-triangle';
import { RuledTable } from '../table/ruled-table';

interface FieldChangesProps {
  readonly fields: readonly ChangedField[];
  readonly items: readonly ChangedItem[];
  /** Words for the two columns, e.g. `Revision B` and `Revision C`, `Draft`. */
  readonly before: string;
  readonly after: string;
  /** Letter in the triangles; null for a draft, which has none: a star stands for it. */
  readonly letter: string | null;
  /** What a change brought about, e.g. its share in the weakest factor. */
  readonly consequence?: ((field: ChangedField) => ReactNode) | undefined;
}

/** Table of changed fields, and sentences for items of lists that came, went or moved. */
export function FieldChanges({ fields, items, before, after, letter, consequence }: FieldChangesProps) {
  if (fields.length === 0 && items.length === 0)
    return (
      <p>
        No field differs between {before} and {after}.
      </p>
    );
  return (
    <>
      {items.map((item) => (
        <p key={`${item.list} ${item.id}`} className="item-change">
          <RevisionTriangle letter={letter ?? '*'} what="changed" /> <span>{itemWords(item)}</span>
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
              f.isNew ? (
                <span key="before" className="hush">
                  not there
                </span>
              ) : (
                <span key="before">{airy(f.before)}</span>
              ),
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

function itemWords({ list, item, kind, from, to, words }: ChangedItem): string {
  const what = item.toLowerCase();
  const counted = list === 'train.stages' ? ', counted from the motor' : '';
  const told = words === '' ? '' : ` (${airy(words)})`;
  if (kind === 'added') return `A ${what} was added in place ${to ?? '–'}${counted}${told}.`;
  if (kind === 'removed')
    return `The ${what} in place ${from ?? '–'}${counted}${told}${counted === '' ? '' : ','} was removed.`;
  return `The ${what} in place ${from ?? '–'}${told} moved to place ${to ?? '–'}.`;
}

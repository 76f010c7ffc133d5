'use client';
// The fields of a group and of the groups within it: gears side by side, and what is one of several shapes folded.
import { memo, useState } from 'react';
import { type FieldRow, type GroupRows, waitingIn } from '@/lib/preview/rows';
import { summaryOf } from '@/lib/preview/summary';
import { placeWords } from '@/lib/preview/words';
import { DesignField } from '@/lib/ui/forms/design-field';
import { Fold } from '@/lib/ui/forms/fold';
import { type ListActions, ListFields } from './list-fields';

interface GroupFieldsProps {
  readonly group: GroupRows;
  readonly actions: ListActions;
}

/**
 * Everything of a group. The fields of another kind are other fields, even where they share a name: what the new kind
 * could not keep must not go on standing in an input.
 */
export function GroupFields({ group, actions }: GroupFieldsProps) {
  const { kind, fields, groups, lists } = group;
  const shape = kind?.text ?? '';
  const side = groups.filter((inner) => inner.kind === null);
  const folded = groups.filter((inner) => inner.kind !== null);
  return (
    <>
      {kind === null && fields.length === 0 ? null : (
        <div className="form-grid">
          {kind === null ? null : <Field key={kind.path} row={kind} />}
          {fields.map((row) => (
            <Field key={`${shape} ${row.path}`} row={row} />
          ))}
        </div>
      )}
      {side.length === 0 ? null : (
        <div className="gear-pair">
          {side.map((inner) => (
            <fieldset key={`${shape} ${inner.path}`} className="gear" id={`field-${inner.path}`}>
              <legend>
                <span className="for-ear">{placeWords(inner.trail.slice(0, -1))}, </span>
                {inner.label}
              </legend>
              <GroupFields group={inner} actions={actions} />
            </fieldset>
          ))}
        </div>
      )}
      {folded.length === 0 ? null : (
        <div className="folds">
          {folded.map((inner) => (
            <FoldedGroup key={`${shape} ${inner.path}`} group={inner} actions={actions} />
          ))}
        </div>
      )}
      {lists.map((list) => (
        <ListFields key={list.path} list={list} within={group} actions={actions}>
          {(item) => <GroupFields group={item} actions={actions} />}
        </ListFields>
      ))}
    </>
  );
}

/** Open from the start where something in it does not fit; from then on it is the reader's. */
function FoldedGroup({ group, actions }: GroupFieldsProps) {
  const waiting = waitingIn(group);
  const [open] = useState(waiting > 0);
  return (
    <Fold label={group.label} words={summaryOf(group)} waiting={waiting} open={open}>
      <fieldset className="bare" id={`field-${group.path}`}>
        <legend className="for-ear">{placeWords(group.trail)}</legend>
        {group.help === '' ? null : <p className="hush">{group.help}</p>}
        <GroupFields group={group} actions={actions} />
      </fieldset>
    </Fold>
  );
}

/** The text is the input's own once it is on the page, so only a new problem draws a field again. */
const Field = memo(
  function Field({ row }: { readonly row: FieldRow }) {
    return (
      <DesignField field={row.field} path={row.path} value={row.text} error={row.problem ?? undefined} />
    );
  },
  (was, now) => was.row.path === now.row.path && was.row.problem === now.row.problem,
);

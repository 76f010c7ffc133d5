'use client';
// All fields of a draft, a lettered view a part. One listener hears every field; stages can be added, moved and removed.
import { type FormEvent, memo, useEffect, useRef } from 'react';
import type { FieldRow, GroupRows, PartRows, StageRows } from '@/lib/preview/rows';
import { Actions, Button } from '@/lib/ui/forms/button';
import { DesignField } from '@/lib/ui/forms/design-field';
import { View } from '@/lib/ui/sheet/view';
import { ViewIndex } from '@/lib/ui/sheet/view-index';
import { typedEarly } from './typed-early';

interface StageActions {
  readonly onInsert: (after: string) => void;
  readonly onRemove: (id: string) => void;
  readonly onMove: (id: string, by: -1 | 1) => void;
}

interface DraftFormProps extends StageActions {
  readonly parts: readonly PartRows[];
  readonly onText: (path: string, text: string) => void;
}

const letters = 'ABCDEFGHJ';

export function DraftForm({ parts, onText, onInsert, onRemove, onMove }: DraftFormProps) {
  const heard = (event: FormEvent<HTMLDivElement>) => {
    const input = event.target;
    if (input instanceof HTMLInputElement || input instanceof HTMLSelectElement)
      onText(input.name, input.value);
  };
  const fields = useRef<HTMLDivElement>(null);
  // The stage, by its place, that takes the focus once the stages stand in their new order.
  const next = useRef<number | null>(null);
  useEffect(() => {
    if (next.current === null || parts.length === 0) return;
    fields.current?.querySelectorAll<HTMLElement>('.stage')[next.current]?.focus();
    next.current = null;
  }, [parts]);
  const opened = useRef({ parts, onText });
  useEffect(() => {
    if (fields.current === null) return;
    for (const { path, text } of typedEarly(fields.current, opened.current.parts))
      opened.current.onText(path, text);
  }, []);
  return (
    <div ref={fields} onInput={heard}>
      <ViewIndex
        views={[
          ...parts.map((part, i) => ({ letter: letters[i] ?? '', title: part.label, id: part.key })),
          { letter: null, title: 'What holds', id: 'preview' },
          { letter: null, title: 'Publish', id: 'publish' },
        ]}
      />
      {parts.map((part, i) => (
        <View
          key={part.key}
          letter={letters[i] ?? ''}
          title={part.label}
          id={part.key}
          aside={waitingWords(part.waiting)}
        >
          {part.help === '' ? null : <p className="hush">{part.help}</p>}
          <Fields fields={part.fields} />
          {part.stages?.map((stage, n) => (
            <Stage
              key={stage.id}
              stage={stage}
              first={n === 0}
              count={part.stages?.length ?? 0}
              last={n + 1 === part.stages?.length}
              onInsert={(id) => {
                next.current = n + 1;
                onInsert(id);
              }}
              onRemove={(id) => {
                next.current = Math.max(0, n - 1);
                onRemove(id);
              }}
              onMove={(id, by) => {
                next.current = n + by;
                onMove(id, by);
              }}
            />
          ))}
        </View>
      ))}
    </div>
  );
}

function waitingWords(waiting: number): string | undefined {
  if (waiting === 0) return undefined;
  return waiting === 1 ? '1 field to put right' : `${waiting} fields to put right`;
}

interface StageProps extends StageActions {
  readonly stage: StageRows;
  readonly first: boolean;
  readonly last: boolean;
  readonly count: number;
}

function Stage({ stage, first, last, count, onInsert, onRemove, onMove }: StageProps) {
  return (
    <section className="stage" id={`field-${stage.path}`} aria-label={stage.label} tabIndex={-1}>
      <h3>{stage.label}</h3>
      <Fields fields={stage.fields} />
      <div className="gear-pair">
        {stage.gears.map((gear) => (
          <Gear key={gear.path} gear={gear} stage={stage.label} />
        ))}
      </div>
      <Actions>
        <Button type="button" kind="quiet" onClick={() => onInsert(stage.id)} disabled={count >= 8}>
          Add a stage after {stage.label.toLowerCase()}
        </Button>
        <Button type="button" kind="quiet" onClick={() => onMove(stage.id, -1)} disabled={first}>
          Towards the motor
        </Button>
        <Button type="button" kind="quiet" onClick={() => onMove(stage.id, 1)} disabled={last}>
          Towards the output
        </Button>
        <Button type="button" kind="quiet" onClick={() => onRemove(stage.id)} disabled={count === 1}>
          Remove {stage.label.toLowerCase()}
        </Button>
      </Actions>
    </section>
  );
}

function Gear({ gear, stage }: { readonly gear: GroupRows; readonly stage: string }) {
  return (
    <section className="gear" aria-label={`${stage}, ${gear.label.toLowerCase()}`}>
      <h4>{gear.label}</h4>
      <Fields fields={gear.fields} />
    </section>
  );
}

function Fields({ fields }: { readonly fields: readonly FieldRow[] }) {
  return (
    <div className="form-grid">
      {fields.map((row) => (
        <Field key={row.path} row={row} />
      ))}
    </div>
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

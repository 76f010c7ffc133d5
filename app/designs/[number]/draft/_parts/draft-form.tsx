'use client';
// All fields of a draft, a lettered view a part. One listener hears every field; items of lists can be added, moved and
// removed.
import { type FormEvent, useEffect, useRef } from 'react';
import type { PartRows } from '@/lib/preview/rows';
import { View } from '@/lib/ui/sheet/view';
import { ViewIndex } from '@/lib/ui/sheet/view-index';
import { viewLetter } from '@/lib/ui/sheet/view-letter';
import { GroupFields } from './group-fields';
import type { ListActions } from './list-fields';
import { typedEarly } from './typed-early';

interface DraftFormProps extends ListActions {
  readonly parts: readonly PartRows[];
  readonly onText: (path: string, text: string) => void;
}

export function DraftForm({ parts, onText, onInsert, onRemove, onMove }: DraftFormProps) {
  const heard = (event: FormEvent<HTMLDivElement>) => {
    const input = event.target;
    if (input instanceof HTMLInputElement || input instanceof HTMLSelectElement)
      onText(input.name, input.value);
  };
  const fields = useRef<HTMLDivElement>(null);
  // The item, by its list and place, that takes the focus once the items stand in their new order.
  const next = useRef<{ readonly list: string; readonly place: number } | null>(null);
  useEffect(() => {
    if (next.current === null || parts.length === 0) return;
    const { list, place } = next.current;
    const shown = fields.current?.querySelector(`[data-list="${list}"]`);
    const item = shown?.querySelectorAll<HTMLElement>(':scope > [data-item]')[place];
    (item ?? shown?.querySelector<HTMLElement>('[data-add]'))?.focus();
    next.current = null;
  }, [parts]);
  const opened = useRef({ parts, onText });
  useEffect(() => {
    if (fields.current === null) return;
    for (const { path, text } of typedEarly(fields.current, opened.current.parts))
      opened.current.onText(path, text);
  }, []);
  const actions: ListActions = {
    onInsert: (list, after, place) => {
      next.current = { list, place };
      onInsert(list, after, place);
    },
    onRemove: (list, id, place) => {
      next.current = { list, place: Math.max(0, place - 1) };
      onRemove(list, id, place);
    },
    onMove: (list, id, by, place) => {
      next.current = { list, place: place + by };
      onMove(list, id, by, place);
    },
  };
  return (
    <div ref={fields} onInput={heard}>
      <ViewIndex
        views={[
          ...parts.map((part, i) => ({ letter: viewLetter(i), title: part.label, id: part.path })),
          { letter: null, title: 'What holds', id: 'preview' },
          { letter: null, title: 'Publish', id: 'publish' },
        ]}
      />
      {parts.map((part, i) => (
        <View
          key={part.path}
          letter={viewLetter(i)}
          title={part.label}
          id={part.path}
          aside={waitingWords(part.waiting)}
        >
          {part.help === '' ? null : <p className="hush">{part.help}</p>}
          <GroupFields group={part} actions={actions} />
        </View>
      ))}
    </div>
  );
}

function waitingWords(waiting: number): string | undefined {
  if (waiting === 0) return undefined;
  return waiting === 1 ? '1 field to put right' : `${waiting} fields to put right`;
}

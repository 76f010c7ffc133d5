'use client';
// A list of a draft: an item a box, with what can be done to it. What cannot be lengthened here is shown as a table.
import type { ReactNode } from 'react';
import type { ListPath } from '@/lib/design/starts';
import type { GroupRows, ItemRows, ListRows } from '@/lib/preview/rows';
import { summaryOf } from '@/lib/preview/summary';
import { ItemTable } from '@/lib/ui/entered/item-table';
import { Actions, Button } from '@/lib/ui/forms/button';
import { Fold } from '@/lib/ui/forms/fold';

/** What can be done to the items of lists; `place` counts from zero and says where the item stands or will stand. */
export interface ListActions {
  readonly onInsert: (list: ListPath, after: string | null, place: number) => void;
  readonly onRemove: (list: ListPath, id: string, place: number) => void;
  readonly onMove: (list: ListPath, id: string, by: -1 | 1, place: number) => void;
}

/** What moving an item to and fro is called. */
const ways: Readonly<Record<ListPath, readonly [back: string, forth: string]>> = {
  'train.stages': ['Towards the motor', 'Towards the output'],
  'duty.loads': ['Up', 'Down'],
};

interface ListFieldsProps {
  readonly list: ListRows;
  /** The group that it stands in; a part that is nothing but a list says its name and help already. */
  readonly within: GroupRows;
  readonly actions: ListActions;
  /** The fields of one item. */
  readonly children: (item: ItemRows) => ReactNode;
}

export function ListFields({ list, within, actions, children }: ListFieldsProps) {
  const { edits, items } = list;
  return (
    <div className="items" data-list={list.path}>
      {list.path === within.path || list.min > 0 ? null : (
        <div>
          <h3>{list.label}</h3>
          {list.help === '' ? null : <p className="hush">{list.help}</p>}
        </div>
      )}
      {edits === null ? (
        <ItemTable list={list} />
      ) : (
        items.map((item, place) => (
          <Item key={item.id} item={item}>
            {children(item)}
            <ItemActions {...{ list, edits, item, place, actions }} />
          </Item>
        ))
      )}
      {edits === null || isLarge(items[0]) ? null : (
        <Actions>
          <Button
            type="button"
            kind="quiet"
            data-add={list.path}
            disabled={items.length >= list.max}
            onClick={() => actions.onInsert(edits, items.at(-1)?.id ?? null, items.length)}
          >
            Add a {list.item.toLowerCase()}
          </Button>
        </Actions>
      )}
    </div>
  );
}

/** An item with groups of its own, as a stage: a new one is put after it from its own foot. */
function isLarge(item: ItemRows | undefined): boolean {
  return item !== undefined && item.groups.length > 0;
}

function Item({ item, children }: { readonly item: ItemRows; readonly children: ReactNode }) {
  const large = isLarge(item);
  return (
    <section
      className={large ? 'stage' : 'gear'}
      data-item={item.id}
      id={`field-${item.path}`}
      aria-label={item.label}
      tabIndex={-1}
    >
      {large ? (
        <Fold label={item.label} words={summaryOf(item)} heading open>
          {children}
        </Fold>
      ) : (
        <>
          <h4>{item.label}</h4>
          {children}
        </>
      )}
    </section>
  );
}

interface ItemActionsProps {
  readonly list: ListRows;
  readonly edits: ListPath;
  readonly item: ItemRows;
  readonly place: number;
  readonly actions: ListActions;
}

function ItemActions({ list, edits, item, place, actions }: ItemActionsProps) {
  const [back, forth] = ways[edits];
  const { length } = list.items;
  return (
    <Actions>
      {isLarge(item) ? (
        <Button
          type="button"
          kind="quiet"
          disabled={length >= list.max}
          onClick={() => actions.onInsert(edits, item.id, place + 1)}
        >
          Add a {list.item.toLowerCase()} after {item.label.toLowerCase()}
        </Button>
      ) : null}
      <Button
        type="button"
        kind="quiet"
        disabled={place === 0}
        onClick={() => actions.onMove(edits, item.id, -1, place)}
      >
        {back}
      </Button>
      <Button
        type="button"
        kind="quiet"
        disabled={place + 1 === length}
        onClick={() => actions.onMove(edits, item.id, 1, place)}
      >
        {forth}
      </Button>
      <Button
        type="button"
        kind="quiet"
        disabled={length <= list.min}
        onClick={() => actions.onRemove(edits, item.id, place)}
      >
        Remove {item.label.toLowerCase()}
      </Button>
    </Actions>
  );
}

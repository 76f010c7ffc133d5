// What was entered in a document, part by part, folded; a part that is not described is one row.
import type { Design } from '@/lib/design/document';
import { fieldsIn, type GroupRows, type ItemRows, rowsOf } from '@/lib/preview/rows';
import { hasFields, summaryOf } from '@/lib/preview/summary';
import { placeWords } from '@/lib/preview/words';
import type { RemarkPin } from '@/lib/ui/checks/remark-pin';
import type { ChangedFields } from '@/lib/ui/entered/entered-value';
import { FieldTable } from '@/lib/ui/entered/field-table';
import { ItemTable } from '@/lib/ui/entered/item-table';
import { RevisionTriangle } from '@/lib/ui/marks/revision-triangle';
import { PartFold } from '@/lib/ui/sheet/part-fold';

interface Marks {
  readonly pins?: readonly RemarkPin[] | undefined;
  /** What this revision changed: marked, and said at the folds. */
  readonly changed?: ChangedFields | undefined;
}

interface EnteredProps extends Marks {
  readonly document: Design;
  /** Address of the sheet in full where the parts are left off the page; those that a remark speaks of never are. */
  readonly inFull?: string | undefined;
  /** Whether parts that stand in the page stand open. */
  readonly open?: boolean | undefined;
}

export function Entered({ document, inFull, open, ...marks }: EnteredProps) {
  return partsOf(document).map((part) => (
    <PartFold
      key={part.path}
      id={enteredFold(part.path)}
      className="entered"
      summary={
        <>
          {part.label}
          <ChangedCount group={part} changed={marks.changed} />
        </>
      }
      what={`what was entered under “${part.label}”`}
      inFull={marks.pins?.some((pin) => partOf(pin.at) === part.path) === true ? undefined : inFull}
      open={open}
    >
      <GroupTables group={part} {...marks} />
    </PartFold>
  ));
}

/** What the fold of a part holds; null when there is no such part. */
export function enteredPart({ document, fold, ...marks }: Marks & { document: Design; fold: string }) {
  const part = partsOf(document).find((p) => enteredFold(p.path) === fold);
  return part === undefined ? null : <GroupTables group={part} {...marks} />;
}

/** Name of the fold in which the field, or the part, of a path stands. */
export function enteredFold(path: string): string {
  return `entered-${partOf(path)}`;
}

function partOf(path: string): string {
  return path.split('.')[0] ?? path;
}

function partsOf(document: Design) {
  return rowsOf({ document, pending: {} });
}

type GroupTablesProps = Marks & { readonly group: GroupRows };

/** A table of the group's own fields and of the parts in it that are not described, then the others each in its own. */
function GroupTables({ group, ...marks }: GroupTablesProps) {
  const own = [...(group.kind === null ? [] : [group.kind]), ...group.fields];
  const bare = group.groups.flatMap((inner) =>
    inner.kind === null || hasFields(inner) ? [] : [{ ...inner.kind, name: inner.label }],
  );
  return (
    <>
      {own.length + bare.length === 0 ? null : (
        <FieldTable caption={placeWords(group.trail)} rows={[...own, ...bare]} {...marks} />
      )}
      {group.groups.filter(hasFields).map((inner) => (
        <GroupTables key={inner.path} group={inner} {...marks} />
      ))}
      {group.lists.map((list) =>
        list.items.some((item) => item.groups.length > 0) ? (
          list.items.map((item) => <ItemTables key={item.path} item={item} {...marks} />)
        ) : (
          <ItemTable key={list.path} list={list} {...marks} />
        ),
      )}
    </>
  );
}

/** An item with groups of its own, as a stage, folds by itself. */
function ItemTables({ item, ...marks }: Marks & { readonly item: ItemRows }) {
  return (
    <details className="entered">
      <summary>
        {item.label}: {summaryOf(item)}
        <ChangedCount group={item} changed={marks.changed} />
      </summary>
      <GroupTables group={item} {...marks} />
    </details>
  );
}

function ChangedCount({ group, changed }: { readonly group: GroupRows } & Pick<Marks, 'changed'>) {
  if (changed === undefined) return null;
  const count = fieldsIn(group).filter((f) => changed.paths.has(f.path)).length;
  if (count === 0) return null;
  return (
    <>
      {' '}
      <RevisionTriangle letter={changed.letter} what={`in revision ${changed.letter}`} />{' '}
      {count === 1 ? '1 changed' : `${count} changed`}
    </>
  );
}

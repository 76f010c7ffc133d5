// A group of fields in one line, for the fold that holds it: `Parallel key, 12 mm, 1 unknown`.
import { printEntered, unitTail } from '@/lib/quantity/print';
import { type FieldRow, fieldsIn, type GroupRows } from './rows';

/** Whether a group has anything to enter: a part that is not described, or of one piece, has only its kind. */
export function hasFields({ fields, groups, lists }: GroupRows): boolean {
  return fields.length + groups.length + lists.length > 0;
}

/** Its kind, the first name, choice and quantity that are known, and how many of its fields are unknown. */
export function summaryOf(group: GroupRows): string {
  const kind = group.kind === null ? [] : [shown(group.kind)];
  const told = new Set<string>();
  const first = group.fields.filter(({ field, text }) => {
    if (text === '' || field.kind === 'flag' || told.has(field.kind)) return false;
    told.add(field.kind);
    return true;
  });
  const unknown = fieldsIn(group).filter(isUnknown).length;
  const tail = unknown === 0 ? [] : [`${unknown} unknown`];
  return [...kind, ...first.map((row, i) => within(row, kind.length + i)), ...tail].join(', ');
}

/** A choice as it stands within a line: small, but for names and sizes; a name stays as it was typed. */
function within(row: FieldRow, place: number): string {
  const words = shown(row);
  const common = row.field.kind === 'choice' && /^[A-Z]([a-z]|(?= ))/.test(words);
  return place > 0 && common ? words.charAt(0).toLowerCase() + words.slice(1) : words;
}

function isUnknown({ field, text }: FieldRow): boolean {
  return text === '' && field.kind !== 'text' && field.unknown;
}

/** A text in words; one that does not fit its field stands as it was typed. */
function shown({ field, text, problem }: FieldRow): string {
  if (problem !== null) return text;
  if (field.kind === 'choice') return field.options[text] ?? text;
  return field.kind === 'quantity' ? `${printEntered(Number(text))}${unitTail(field.unit)}` : text;
}

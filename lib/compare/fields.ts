// The changed fields of a design, printed as they were entered.
import { align, type FieldChange, type ItemChange } from '@/lib/design/align';
import type { Design } from '@/lib/design/document';
import type { FieldValue } from '@/lib/design/walk';
import type { LeafField } from '@/lib/quantity/field';
import { printEntered, unitTail } from '@/lib/quantity/print';
import type { ChangedField, ChangedItem, Comparison } from './comparison';

/** Shown for what is unknown or empty. */
const unknown = '–';

/** Fields that differ, in the order of the parts, and items of lists that came, went or moved. */
export function changedFields(before: Design, after: Design): Pick<Comparison, 'fields' | 'items'> {
  const { fields, items } = align(before, after);
  return { fields: fields.map(told), items: items.map(itemTold) };
}

/** A field's value in words: digits as entered with their unit, a choice by its label, yes or no. */
export function printField(value: FieldValue, field: LeafField): string {
  if (value === null || value === '') return unknown;
  if (typeof value === 'number')
    return `${printEntered(value)}${field.kind === 'quantity' ? unitTail(field.unit) : ''}`;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return field.kind === 'choice' ? (field.options[value] ?? value) : value;
}

function told(change: FieldChange): ChangedField {
  return {
    path: change.path,
    label: change.field.label,
    trail: change.trail,
    before: printField(change.before, change.field),
    after: printField(change.after, change.field),
    rawBefore: change.before,
    rawAfter: change.after,
    isNew: change.isNew,
  };
}

function itemTold({ held, ...where }: ItemChange): ChangedItem {
  return { ...where, words: itemWords(held) };
}

/** All that is entered in an item of plain fields; name and kind of one that has parts of its own, as a stage. */
function itemWords({ path, fields, parts }: ItemChange['held']): string {
  return fields
    .filter((f) => parts.length === 0 || f.field.kind === 'text' || f.path === `${path}.kind`)
    .filter((f) => f.value !== null && f.value !== '')
    .map((f) => (f.field.kind === 'text' ? `“${f.value}”` : printField(f.value, f.field)))
    .join(', ');
}

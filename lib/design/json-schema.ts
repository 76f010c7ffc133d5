// The design document as JSON Schema, for editors and programs that write documents.
import { z } from 'zod';
import { type ChoiceField, fieldOf, type QuantityField } from '@/lib/quantity/field';
import { unitOf } from '@/lib/quantity/units';
import { design, documentVersion } from './document';
import { withNamedParts } from './json-schema-parts';

/** A schema node as JSON; the key words used here are those of the 2020-12 vocabulary besides `unit` and `symbol`. */
export type JsonSchema = Readonly<Record<string, unknown>>;

/**
 * JSON Schema 2020-12 of the document. Every field has a title; a quantity carries `unit` (the key of
 * lib/quantity/units that its number is held in) and `symbol` as annotations; a choice tells what its values mean; a part
 * of several shapes is `oneOf` them, each with the name of its kind as title. What is used in several places stands under
 * `$defs`. That ids of items differ from each other cannot be said here: opening a document checks it.
 */
export function jsonSchema(): JsonSchema {
  const made = z.toJSONSchema(design, {
    target: 'draft-2020-12',
    reused: 'ref',
    override: ({ zodSchema, jsonSchema: node }) => annotate(zodSchema, node),
  });
  const { $schema, ...rest } = withNamedParts(made);
  return { $schema, title: `Actuator design, document version ${documentVersion}`, ...rest };
}

function annotate(schema: z.core.$ZodType, node: Record<string, unknown>): void {
  const field = fieldOf(schema);
  delete node.field;
  if (field === undefined) return;
  if (field.kind === 'quantity') {
    node.unit = field.unit;
    node.symbol = field.symbol;
  }
  const kind = kindOf(schema);
  if (kind !== null) node.title = `${field.label}: ${kind}`;
  const description = describe(schema, field);
  if (description !== '') node.description = description;
}

/** What the kind is called that a shape of several is; null for every other schema. */
function kindOf(schema: z.core.$ZodType): string | null {
  if (!(schema instanceof z.ZodObject)) return null;
  const kind: unknown = schema.shape.kind;
  return kind instanceof z.ZodLiteral ? meaning(kind) : null;
}

/** What the only value of a `kind` means. */
function meaning(literal: z.ZodLiteral): string | null {
  const field = fieldOf(literal);
  return field?.kind === 'choice' ? (field.options[String(literal.value)] ?? null) : null;
}

function describe(schema: z.core.$ZodType, field: NonNullable<ReturnType<typeof fieldOf>>): string {
  const help = 'help' in field ? field.help : '';
  if (field.kind === 'quantity') return sentence(help, inUnit(field), unknown(field));
  if (field.kind !== 'choice') return help;
  if (schema instanceof z.ZodLiteral) return `${schema.value}: ${meaning(schema)}.`;
  const meanings = Object.entries(field.options).map(([key, shown]) => `${key}: ${shown}`);
  return sentence(help, `${meanings.join('; ')}.`, unknown(field));
}

function inUnit({ unit }: QuantityField): string {
  const { print } = unitOf(unit);
  return print === '' ? '' : `In ${print}.`;
}

function unknown(field: QuantityField | ChoiceField): string {
  return field.unknown ? 'null: unknown.' : '';
}

function sentence(...pieces: readonly string[]): string {
  return pieces.filter((piece) => piece !== '').join(' ');
}

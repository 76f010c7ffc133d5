// The design document as JSON Schema, for editors and programs that write documents.
import { z } from 'zod';
import { fieldOf } from '@/lib/quantity/field';
import { unitOf } from '@/lib/quantity/units';
import { design, documentVersion } from './document';

/** A schema node as JSON; the key words used here are those of the 2020-12 vocabulary besides `unit` and `symbol`. */
export type JsonSchema = Readonly<Record<string, unknown>>;

/**
 * JSON Schema 2020-12 of the document. Every field has a title; a quantity carries `unit` (the key of
 * lib/quantity/units that its number is held in) and `symbol` as annotations; a choice tells what its values mean.
 * That stage ids differ from each other cannot be said here: opening a document checks it.
 */
export function jsonSchema(): JsonSchema {
  const made = z.toJSONSchema(design, {
    target: 'draft-2020-12',
    override: ({ zodSchema, jsonSchema: node }) => annotate(zodSchema, node),
  });
  const { $schema, ...rest } = made;
  return { $schema, title: `Actuator design, document version ${documentVersion}`, ...rest };
}

function annotate(schema: z.core.$ZodType, node: Record<string, unknown>): void {
  const field = fieldOf(schema);
  delete node.field;
  if (field === undefined) return;
  const help = 'help' in field ? field.help : '';
  if (field.kind === 'quantity') {
    const print = unitOf(field.unit).print;
    node.unit = field.unit;
    node.symbol = field.symbol;
    node.description = sentence(
      help,
      print === '' ? '' : `In ${print}.`,
      field.unknown ? 'null: unknown.' : '',
    );
  } else if (field.kind === 'choice') {
    const meanings = Object.entries(field.options).map(([key, shown]) => `${key}: ${shown}`);
    node.description = sentence(help, `${meanings.join('; ')}.`, field.unknown ? 'null: unknown.' : '');
  } else if (help !== '') {
    node.description = help;
  }
}

function sentence(...pieces: readonly string[]): string {
  return pieces.filter((piece) => piece !== '').join(' ');
}

// The document as JSON Schema: what an editor outside Pawl needs to write a design.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { jsonSchema } from '@/lib/design/json-schema';
import { openDocument } from '@/lib/design/open';
import { leafAt } from '@/lib/design/path';
import { starters } from '@/lib/design/starters/registry';
import { fieldsOf } from '@/lib/design/walk';
import { anyDesign } from './any-design';

const seed = 20270;
const schema = jsonSchema();
// Independent of the document's own schema: rebuilt from nothing but the exported JSON text.
const rebuilt = z.fromJSONSchema(JSON.parse(JSON.stringify(schema)));

/** The node of the schema at a path through ids. */
function nodeAt(path: string): Record<string, unknown> {
  let node: unknown = schema;
  for (const key of path.split('.')) {
    const items: unknown = Reflect.get(Object(node), 'items');
    node = items ?? shapesOf(node).find((shape) => Object.hasOwn(shape, key))?.[key];
  }
  return node as Record<string, unknown>;
}

/** The fields of a part, or those of each of its kinds. */
function shapesOf(node: unknown): Record<string, unknown>[] {
  const kinds: unknown = Reflect.get(Object(node), 'oneOf') ?? Reflect.get(Object(node), 'anyOf');
  return (Array.isArray(kinds) ? kinds : [node]).map((kind) =>
    Object(Reflect.get(Object(kind), 'properties')),
  );
}

describe('the exported JSON Schema', () => {
  it('says which vocabulary it uses and what it describes', () => {
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(schema.title).toBe('Actuator design, document version 2');
    expect(schema.additionalProperties).toBe(false);
  });

  it.each(Object.entries(starters))(
    'accepts the starter %s when rebuilt from its text alone',
    (_, starter) => {
      expect(rebuilt.safeParse(starter.document).success).toBe(true);
    },
  );

  it('accepts every valid document', () => {
    fc.assert(
      fc.property(anyDesign, (document) => rebuilt.safeParse(document).success),
      { seed, numRuns: 30 },
    );
  });

  it.each([
    ['motor.mass', -1],
    ['motor.mass', null],
    ['motor.polePairs', 7.5],
    ['supply.kind', 'coal'],
    ['rig.guard', 'yes'],
    ['rig.extra', 1],
    ['version', 3],
  ])('refuses %s = %j, as opening does', (path, value) => {
    const spoilt = JSON.parse(JSON.stringify(starters.lifter.document));
    const [part = '', key] = path.split('.');
    if (key === undefined) spoilt[part] = value;
    else spoilt[part][key] = value;
    expect(rebuilt.safeParse(spoilt).success).toBe(false);
    expect(openDocument(spoilt).ok).toBe(false);
  });

  it('carries title, unit, symbol and range of every quantity', () => {
    for (const { path } of fieldsOf(starters.lifter.document)) {
      const field = leafAt(path);
      const node = nodeAt(path);
      expect(node.title, path).toBe(field?.label);
      if (field?.kind !== 'quantity') continue;
      expect(node.unit, path).toBe(field.unit);
      expect(node.symbol, path).toBe(field.symbol);
      const number = (field.unknown ? Reflect.get(Object(node.anyOf), 0) : node) as Record<string, unknown>;
      expect([number.minimum, number.maximum], path).toEqual([field.min, field.max]);
      expect(number.type, path).toBe(field.whole ? 'integer' : 'number');
    }
  });

  it('tells what the values of a choice mean and which field may be null', () => {
    expect(nodeAt('drive.lostCommand').description).toContain('brake: Brakes');
    expect(nodeAt('drive.lostCommand').description).toContain('null: unknown.');
    expect(nodeAt('supply.leadArea').description).toContain('In mm².');
  });
});

// The document as JSON Schema: what an editor outside Pawl needs to write a design.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import type { Design } from '@/lib/design/document';
import { jsonSchema } from '@/lib/design/json-schema';
import { openDocument } from '@/lib/design/open';
import { leafAt, valueAt } from '@/lib/design/path';
import { starters } from '@/lib/design/starters/registry';
import { fieldsOf } from '@/lib/design/walk';
import { anyDesign } from './any-design';

const seed = 20270;
const lifter = starters.lifter.document;
const schema = jsonSchema();
// Independent of the document's own schema: rebuilt from nothing but the exported JSON text.
const rebuilt = z.fromJSONSchema(JSON.parse(JSON.stringify(schema)));

type Node = Readonly<Record<string, unknown>>;

function child(node: unknown, key: string): unknown {
  return Reflect.get(Object(node), key);
}

/** A node itself, where only a reference to it stands. */
function resolved(node: unknown): Node {
  const ref = child(node, '$ref');
  if (typeof ref !== 'string') return Object(node);
  return resolved(child(schema.$defs, ref.replace('#/$defs/', '')));
}

/** The node of the schema at a path through ids, in the shape that a document has there. */
function nodeAt(path: string, document: Design = lifter): Node {
  let node = resolved(schema);
  let here = '';
  for (const key of path.split('.')) {
    const items = child(node, 'items');
    node = resolved(items ?? child(child(node, 'properties'), key));
    here = here === '' ? key : `${here}.${key}`;
    const shapes = node.oneOf;
    if (!Array.isArray(shapes)) continue;
    const kind = valueAt(document, `${here}.kind`);
    node = resolved(shapes.find((shape) => kindOf(shape).const === kind));
  }
  return node;
}

function kindOf(shape: unknown): Node {
  return resolved(child(child(resolved(shape), 'properties'), 'kind'));
}

describe('the exported JSON Schema', () => {
  it('says which vocabulary it uses and what it describes', () => {
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(schema.title).toBe('Actuator design, document version 3');
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
      { seed, numRuns: 12 },
    );
  });

  it.each([
    ['motor.mass', -1],
    ['motor.mass', null],
    ['motor.polePairs', 7.5],
    ['supply.kind', 'coal'],
    ['rig.guard', 'yes'],
    ['rig.extra', 1],
    ['version', 4],
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

  it('names every shape of a part of several, and says of its kind what that one kind means', () => {
    const hub = resolved(child(nodeAt('output').properties, 'armHub'));
    const shapes = Array.isArray(hub.oneOf) ? hub.oneOf : [];
    expect(hub.title).toBe('Hub of the arm');
    expect(shapes.map((shape) => [resolved(shape).title, kindOf(shape).description])).toEqual([
      ['Hub of the arm: Not described', 'unnamed: Not described.'],
      ['Hub of the arm: One piece with its shaft', 'integral: One piece with its shaft.'],
      ['Hub of the arm: Parallel key', 'key: Parallel key.'],
      ['Hub of the arm: Flat on the shaft', 'flat: Flat on the shaft.'],
      ['Hub of the arm: Set screws', 'setScrew: Set screws.'],
      ['Hub of the arm: Split clamp', 'clamp: Split clamp.'],
      ['Hub of the arm: Press fit', 'press: Press fit.'],
      ['Hub of the arm: Polygon or square', 'polygon: Polygon or square.'],
      ['Hub of the arm: Spline', 'spline: Spline.'],
      ['Hub of the arm: Screwed flange', 'flange: Screwed flange.'],
    ]);
    expect(shapes.map((shape) => kindOf(shape).title)).toEqual(shapes.map(() => 'Joined by'));
  });

  it('refuses a shape with another kind’s field, and a kind that there is not', () => {
    const spoilt = structuredClone(lifter);
    const withHub = (armHub: unknown) => ({ ...spoilt, output: { ...spoilt.output, armHub } });
    const key = { kind: 'key', diameter: 12, length: null };
    expect(rebuilt.safeParse(withHub(key)).success).toBe(true);
    for (const hub of [
      { ...key, kind: 'glue' },
      { ...key, kind: 'unnamed' },
      { ...key, thickness: 5 },
    ]) {
      expect(rebuilt.safeParse(withHub(hub)).success).toBe(false);
      expect(openDocument(withHub(hub)).ok).toBe(false);
    }
  });

  it('holds what several places share once, by a name made of its title', () => {
    const text = JSON.stringify(schema);
    const defs = Object.entries(Object(schema.$defs));
    expect(defs.length).toBeGreaterThan(20);
    for (const [name, part] of defs) {
      expect(text.split(`"#/$defs/${name}"`).length - 1, name).toBeGreaterThan(1);
      const title = child(part, 'title');
      if (typeof title === 'string')
        expect(name).toMatch(new RegExp(`^${title.toLowerCase().replace(/[^a-z0-9]+/g, '-')}(-[0-9]+)?$`));
    }
    expect(text).not.toContain('__schema');
  });
});

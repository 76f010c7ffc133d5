// The document as a whole: every leaf is described, and walking, addressing and reading agree with each other.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { design, parts } from '@/lib/design/document';
import { fieldAt, leafAt, valueAt, withValue } from '@/lib/design/path';
import { starters } from '@/lib/design/starters/registry';
import { fieldsOf, fieldsUnder } from '@/lib/design/walk';
import { fieldOf } from '@/lib/quantity/field';
import { units } from '@/lib/quantity/units';
import { anyDesign } from './any-design';

const seed = 20264;
const lifter = starters.lifter.document;

/** Every schema node below `schema` with its path, found by zod's own structure and not by the code under test. */
function nodes(schema: z.core.$ZodType, path: string): [string, z.core.$ZodType][] {
  if (schema instanceof z.ZodObject) {
    const inner = Object.entries<z.core.$ZodType>(schema.shape).flatMap(([key, child]) =>
      nodes(child, `${path}.${key}`),
    );
    return [[path, schema], ...inner];
  }
  if (schema instanceof z.ZodArray) return [[path, schema], ...nodes(schema.element, `${path}[]`)];
  if (schema instanceof z.ZodDiscriminatedUnion)
    return [[path, schema], ...schema.options.flatMap((shape) => nodes(shape, `${path}(${kindOf(shape)})`))];
  return [[path, schema]];
}

function kindOf(shape: z.core.$ZodType): string {
  const kind: unknown = shape instanceof z.ZodObject ? shape.shape.kind : undefined;
  return kind instanceof z.ZodLiteral ? String(kind.value) : '';
}

const everyNode = Object.entries(parts).flatMap(([key, part]) => nodes(part, key));

describe('the design document', () => {
  it.each(everyNode.filter(([path]) => !path.endsWith('.id')))('describes %s with a label', (_, schema) => {
    const field = fieldOf(schema);
    expect(field?.label.trim()).toBeTruthy();
  });

  it('gives every number a unit of the closed list, a symbol and a range with room in it', () => {
    for (const [path, schema] of everyNode) {
      const inner = schema instanceof z.ZodNullable ? schema.unwrap() : schema;
      if (!(inner instanceof z.ZodNumber)) continue;
      const field = fieldOf(schema);
      if (field?.kind !== 'quantity') throw new Error(`${path} is a number without a unit`);
      expect(Object.keys(units), path).toContain(field.unit);
      expect(field.symbol, path).not.toBe('');
      expect(field.max, path).toBeGreaterThan(field.min);
      expect(field.unknown, path).toBe(schema instanceof z.ZodNullable);
    }
  });

  it('uses a symbol for one thing only among the fields that stand together', () => {
    for (const [path, schema] of everyNode) {
      if (!(schema instanceof z.ZodObject)) continue;
      const own = Object.values<z.core.$ZodType>(schema.shape).map(fieldOf);
      const symbols = own.flatMap((field) => (field?.kind === 'quantity' ? [field.symbol] : []));
      expect(new Set(symbols).size, path).toBe(symbols.length);
    }
  });

  it('means the same field by one name in every kind of a part, so that a change of kind may keep its value', () => {
    let shared = 0;
    for (const [path, schema] of everyNode) {
      if (!(schema instanceof z.ZodDiscriminatedUnion)) continue;
      const met = new Map<string, unknown>();
      for (const shape of schema.options) {
        if (!(shape instanceof z.ZodObject)) throw new Error(`${path} has a kind that is no part`);
        for (const [key, child] of Object.entries<z.core.$ZodType>(shape.shape)) {
          const field = fieldOf(child);
          if (met.has(key)) {
            shared++;
            expect(field, `${path}.${key}`).toEqual(met.get(key));
          }
          met.set(key, field);
        }
      }
    }
    expect(shared).toBeGreaterThan(50);
  });
});

describe('walking a document', () => {
  it('finds every leaf of the document once, by a path that leads back to the same value and description', () => {
    fc.assert(
      fc.property(anyDesign, (document) => {
        const found = fieldsOf(document);
        expect(new Set(found.map((f) => f.path)).size).toBe(found.length);
        for (const { path, value, field } of found) {
          expect(valueAt(document, path)).toBe(value);
          expect(leafAt(path)).toEqual(field);
        }
        const items = document.train.stages.length + document.duty.loads.length + document.coupons.length;
        expect(found.length).toBe(leaves(document) - 1 - items);
      }),
      { seed, numRuns: 30 },
    );
  });

  it('names a field by the labels around it, stages by their place', () => {
    const teeth = fieldsOf(lifter).find((f) => f.path === 'train.stages.s3.pinion.teeth');
    expect(teeth?.trail).toEqual(['Train', 'Stage 3', 'Pinion']);
    expect(teeth?.field.label).toBe('Teeth');
  });

  it('lists what lies under one stage and nothing else', () => {
    const under = fieldsUnder(lifter, 'train.stages.s2');
    const stage = lifter.train.stages[1];
    // All that the stage holds but its id.
    expect(under).toHaveLength(leaves(stage) - 1);
    expect(under.every((f) => f.path.startsWith('train.stages.s2.'))).toBe(true);
  });
});

describe('a path through ids', () => {
  it.each([
    'motor.nothing',
    'version',
    'train.stages.s1.id',
    'train',
    'train.stages',
    'train.stages.s1',
    '',
    '__proto__',
    'duty.__proto__',
    'duty.constructor',
    'duty.peakTorque.more',
  ])('leads to no single field at “%s”', (path) => {
    expect(leafAt(path)).toBeUndefined();
  });

  it('describes parts and lists too', () => {
    expect(fieldAt('motor')?.kind).toBe('part');
    expect(fieldAt('train.stages')?.kind).toBe('list');
    expect(fieldAt('train.stages.any.wheel')?.label).toBe('Wheel');
  });

  it('finds nothing for a stage that is not there, nor by position', () => {
    expect(valueAt(lifter, 'train.stages.gone.module')).toBeUndefined();
    expect(valueAt(lifter, 'train.stages.0.module')).toBeUndefined();
    expect(valueAt(lifter, 'duty.__proto__')).toBeUndefined();
  });

  it('replaces one value, leaves the rest and does not touch what it was given', () => {
    const before = structuredClone(lifter);
    const after = withValue(lifter, 'train.stages.s3.wheel.teeth', 70);
    expect(lifter).toEqual(before);
    expect(valueAt(after, 'train.stages.s3.wheel.teeth')).toBe(70);
    expect(withValue(after, 'train.stages.s3.wheel.teeth', 63)).toEqual(before);
    expect(after.motor).toBe(lifter.motor);
    expect(withValue(lifter, 'train.stages.gone.module', 3)).toEqual(lifter);
  });
});

it('makes any-design documents that the schema takes', () => {
  fc.assert(
    fc.property(anyDesign, (document) => design.safeParse(document).success),
    { seed, numRuns: 20 },
  );
});

/** How many values that are neither object nor list a JSON value holds. */
function leaves(value: unknown): number {
  if (typeof value !== 'object' || value === null) return 1;
  return Object.values(value).reduce((sum: number, child) => sum + leaves(child), 0);
}

// What must hold of these sections on any valid design, whatever is left unknown.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formulaByKey } from '@/lib/calc/registry';
import type { Design } from '@/lib/design/document';
import { leafAt, withValue } from '@/lib/design/path';
import { starterKeys, starters } from '@/lib/design/starters/registry';
import { type FieldValue, fieldsOf } from '@/lib/design/walk';
import type { LeafField } from '@/lib/quantity/field';
import { worked } from './worked';

const seed = 20261125;

function valueFor(field: LeafField): fc.Arbitrary<FieldValue> {
  const value = (): fc.Arbitrary<FieldValue> => {
    switch (field.kind) {
      case 'quantity':
        return field.whole
          ? fc.integer({ min: field.min, max: field.max })
          : fc.oneof(
              fc.constantFrom(field.min, field.max),
              fc.double({ min: field.min, max: field.max, noNaN: true }),
            );
      case 'choice':
        return fc.constantFrom(...Object.keys(field.options));
      case 'flag':
        return fc.boolean();
      case 'text':
        return fc.constant('');
    }
  };
  const unknown = field.kind !== 'flag' && field.kind !== 'text' && field.unknown;
  return unknown ? fc.option(value(), { freq: 3 }) : value();
}

/** A starter with some fields replaced by anything their schema allows, the ends of the range and unknown included. */
const design: fc.Arbitrary<Design> = fc.constantFrom(...starterKeys).chain((key) => {
  const { document } = starters[key];
  const paths = fieldsOf(document)
    .map((f) => f.path)
    .filter((path) => !path.startsWith('train.'));
  return fc
    .subarray(paths, { maxLength: 25 })
    .chain((chosen) =>
      fc.tuple(
        ...chosen.map((path) => {
          const field = leafAt(path);
          if (field === undefined) throw new Error(path);
          return valueFor(field).map((value) => ({ path, value }));
        }),
      ),
    )
    .map((set) => set.reduce((d, { path, value }) => withValue(d, path, value), document));
});

describe('any valid design', () => {
  it('gives the same numbers twice, with and without the sheet, and is left as it was', () => {
    fc.assert(
      fc.property(design, (d) => {
        const copy = structuredClone(d);
        const one = worked(d, true);
        const two = worked(d, false);
        expect(d).toEqual(copy);
        expect(two.work.figures).toEqual(one.work.figures);
        expect(two.work.checks).toEqual(one.work.checks);
        expect(two.work.sheet.steps).toEqual([]);
      }),
      { seed, numRuns: 60 },
    );
  });

  it('has a number or a sentence at every figure and check, never something in between', () => {
    fc.assert(
      fc.property(design, (d) => {
        const { figures, checks, curves } = worked(d, false).work;
        for (const f of figures) {
          if (f.value === null) expect(f.missing, f.key).toMatch(/^\S.*\.$/);
          else expect([Number.isFinite(f.value), f.missing], f.key).toEqual([true, null]);
        }
        for (const c of checks) {
          if (c.factor === null) expect(c.missing, c.key).toMatch(/^\S.*\.$/);
          else expect([Number.isFinite(c.factor), c.missing], c.key).toEqual([true, null]);
          expect(c.status === 'not assessed', c.key).toBe(c.factor === null);
        }
        for (const p of curves.flatMap((c) => c.lines.flatMap((l) => l.points)))
          expect(Number.isFinite(p.x) && Number.isFinite(p.y)).toBe(true);
      }),
      { seed, numRuns: 150 },
    );
  });

  it('works every step from fields, tables, practice or steps before it, each step under a key of its own', () => {
    fc.assert(
      fc.property(design, (d) => {
        const { work } = worked(d, true);
        const known = new Set<string>();
        for (const step of work.sheet.steps) {
          expect(known.has(step.key), `twice: ${step.key}`).toBe(false);
          expect(formulaByKey.has(step.formula), step.formula).toBe(true);
          expect(Number.isFinite(step.value), step.key).toBe(true);
          for (const { from } of step.inputs) {
            if (from.startsWith('step:')) expect(known, from).toContain(from.slice('step:'.length));
            else expect(from).toMatch(/^(field|catalog|practice):\S/);
          }
          known.add(step.key);
        }
        for (const f of work.figures) if (f.step !== null) expect(known, f.key).toContain(f.step);
        for (const c of work.checks) for (const s of c.steps) expect(known, c.key).toContain(s);
      }),
      { seed, numRuns: 60 },
    );
  });

  it('names each figure and each check once', () => {
    for (const key of starterKeys) {
      const { figures, checks, curves } = worked(starters[key].document, false).work;
      const keys = [...figures, ...checks, ...curves].map((x) => x.key);
      expect(keys.filter((k, i) => keys.indexOf(k) !== i)).toEqual([]);
    }
  });
});

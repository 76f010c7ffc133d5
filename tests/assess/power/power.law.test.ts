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

/** A finite number and no excuse, or no number and a sentence that says why. */
function told(value: number | null, missing: string | null): boolean {
  return value === null ? /^\S.*\.$/.test(missing ?? '') : Number.isFinite(value) && missing === null;
}

describe('any valid design', { timeout: 30_000 }, () => {
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
        // Faults are gathered first: one expectation a design keeps a hundred and fifty of them fast.
        const faults = [
          ...figures.filter((f) => !told(f.value, f.missing)).map((f) => f.key),
          ...checks.filter((c) => !told(c.factor, c.missing)).map((c) => c.key),
          ...checks.filter((c) => (c.status === 'not assessed') !== (c.factor === null)).map((c) => c.key),
          ...curves
            .filter((c) => c.lines.some((l) => l.points.some((p) => !Number.isFinite(p.x + p.y))))
            .map((c) => c.key),
        ];
        expect(faults).toEqual([]);
      }),
      { seed, numRuns: 150 },
    );
  });

  it('works every step from fields, tables, practice or steps before it, each step under a key of its own', () => {
    fc.assert(
      fc.property(design, (d) => {
        const { work } = worked(d, true);
        const known = new Set<string>();
        const faults: string[] = [];
        for (const step of work.sheet.steps) {
          if (known.has(step.key)) faults.push(`twice: ${step.key}`);
          if (!formulaByKey.has(step.formula)) faults.push(`no formula: ${step.formula}`);
          if (!Number.isFinite(step.value)) faults.push(`no number: ${step.key}`);
          for (const { from } of step.inputs) {
            const traced = from.startsWith('step:')
              ? known.has(from.slice('step:'.length))
              : /^(field|catalog|practice):\S/.test(from);
            if (!traced) faults.push(`${step.key} from nowhere: ${from}`);
          }
          known.add(step.key);
        }
        for (const f of work.figures)
          if (f.step !== null && !known.has(f.step)) faults.push(`${f.key}: no step ${f.step}`);
        for (const c of work.checks)
          for (const s of c.steps) if (!known.has(s)) faults.push(`${c.key}: no step ${s}`);
        expect(faults).toEqual([]);
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

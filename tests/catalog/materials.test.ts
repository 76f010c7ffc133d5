/** The material catalogue: complete, unchanged from the collection it was read from, and honest about every number. */
import { createHash } from 'node:crypto';
import canonicalize from 'canonicalize';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { materialKeys, materialLabels } from '@/lib/catalog/materials/labels';
import { material, materials, property } from '@/lib/catalog/materials/materials';
import { readTables } from '@/lib/catalog/materials/read';
import { printRule, type RuleKey, ruleLabels, ruleValue } from '@/lib/catalog/materials/rules';
import type { CatalogValue } from '@/lib/catalog/value';

const ruleKeys = z
  .array(z.custom<RuleKey>((key) => typeof key === 'string' && key in ruleLabels))
  .parse(Object.keys(ruleLabels));

const entries = [
  ...[...materials.values()].map((m) => ({ ...m, key: String(m.key) })),
  ...ruleKeys.map((key) => ({ key: String(key), ...printRule(key) })),
];
const values: readonly CatalogValue[] = entries.flatMap((entry) => [...entry.properties.values()]);

describe('the material catalogue', () => {
  it('holds every number of the collection unchanged, with its range, unit, origin and note', () => {
    const collection = entries
      .map(({ key, process, cautions, properties }) => ({
        key,
        process,
        cautions,
        props: Object.fromEntries(
          [...properties].map(([name, v]) => {
            const { value, low, high, unit, source, basis } = v;
            const row = { value, low, high, unit, source, basis };
            return [name, v.note === undefined ? row : { ...row, note: v.note }];
          }),
        ),
      }))
      .sort((a, b) => (a.key < b.key ? -1 : 1));
    // Independent: the digest of the collection itself, taken by another program in another language. A number that
    // is corrected on purpose needs a new digest here and a line in the method log.
    const digest = createHash('sha256')
      .update(canonicalize(collection) ?? '')
      .digest('hex');
    expect(digest).toBe('8af0f8eca760dbe6b363606b732a28b71de6e885ee1fdc519b3bbdff3605ddf5');
    expect(values.length).toBe(770);
  });

  it('names every material once and has data for each name', () => {
    expect([...materials.keys()]).toEqual(Object.keys(materialLabels));
    expect(materialKeys.length).toBe(24);
    for (const key of materialKeys) {
      expect(material(key).name).toBe(materialLabels[key]);
      expect(property(key, 'tensile_xy'), key).toBeDefined();
      expect(property(key, 'density'), key).toBeDefined();
      expect(material(key).cautions.length, key).toBeGreaterThan(0);
    }
  });

  it('gives every value a source, a basis and a range that contains it', () => {
    for (const v of values) {
      expect(v.source.length, v.key).toBeGreaterThan(0);
      expect(v.low, v.key).toBeLessThanOrEqual(v.value);
      expect(v.value, v.key).toBeLessThanOrEqual(v.high);
    }
    // The proportions that the collection states about itself.
    const count = (basis: string) => values.filter((v) => v.basis === basis).length;
    expect([count('sourced'), count('mixed'), count('memory'), count('definition')]).toEqual([
      174, 81, 491, 24,
    ]);
  });

  it('says nothing is read in a source when it is recalled', () => {
    for (const v of values.filter((each) => each.basis === 'sourced'))
      expect(v.source, v.key).toMatch(/S\d| sheet/);
  });

  it('converts to SI: megapascal, per cent, degrees, wear coefficients', () => {
    expect(property('pla_fdm', 'tensile_xy')?.si).toBe(45e6);
    expect(property('pla_fdm', 'elongation_xy')?.si).toBeCloseTo(0.03, 12);
    expect(property('pla_fdm', 'Tg')?.si).toBeCloseTo(333.15, 9);
    const wear = property('pom_machined', 'kw_steel_dry');
    // 1e-6 mm³/(N m) is 1e-15 m³/(N m).
    expect((wear?.si ?? 0) / (wear?.value ?? 1)).toBeCloseTo(1e-15, 27);
    expect(ruleValue('joint_screw_insert', 'min_wall_around_insert')?.si).toBeCloseTo(2.4e-3, 12);
  });

  it('keeps the order of the SI range', () => {
    for (const v of values) {
      expect(v.siLow, v.key).toBeLessThanOrEqual(v.si);
      expect(v.si, v.key).toBeLessThanOrEqual(v.siHigh);
    }
  });

  it('has nothing to say where the collection has nothing', () => {
    expect(property('steel_c45', 'Tg')).toBeUndefined();
  });

  it('refuses a table whose range misses its value, whose source is unknown, or whose property is', () => {
    const known = { density: { unit: 'kg/m3' } } as const;
    const table = (row: unknown, name = 'density') => [
      { x: { name: 'X', process: 'p', cautions: [], properties: { [name]: row } } },
    ];
    expect(readTables(table([2, 1, 3, 'memory', 'memory']), known, 'm').get('x')).toBeDefined();
    expect(() => readTables(table([4, 1, 3, 'memory', 'memory']), known, 'm')).toThrow('contain the value');
    expect(() => readTables(table([2, 1, 3, 'memory', 'S999']), known, 'm')).toThrow('S999');
    expect(() => readTables(table([2, 1, 3, 'memory', 'memory'], 'mass'), known, 'm')).toThrow('mass');
    expect(() => readTables(table([2, 1, 3, 'guess', 'memory']), known, 'm')).toThrow();
  });
});

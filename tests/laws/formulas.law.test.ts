/** Laws every formula of the library obeys: its text and its code agree, and its dimensions come out. */
import { describe, expect, it } from 'vitest';
import { type AnyFormula, formula } from '@/lib/calc/formula';
import { allFormulas, formulaByKey, formulasByShelf } from '@/lib/calc/registry';
import { agreementFaults, dimensionFault, draw, run, seeded, symbolFaults } from './formula-checks';

const seed = 20240607;
const runs = 150;

/**
 * Formulas that hold only in certain units, so that dimensions cannot be proven. Adding one is a decision: the list
 * stands here so that it is taken in view.
 */
const empirical = [
  'gears.meshFrictionSteelOil',
  'gears.rootFatiguePom',
  'gears.flankFatiguePa66',
  'gears.agmaBendingStrength',
  'supply.meltingCurrent',
  'supply.meltingTime',
  'supply.longMeltingCurrent',
];

describe('the registry', () => {
  it('names every formula once, by its shelf', () => {
    expect(formulaByKey.size).toBe(allFormulas.length);
    expect(allFormulas.length).toBeGreaterThan(100);
    for (const [shelf, list] of Object.entries(formulasByShelf))
      for (const f of list) expect(f.key).toMatch(new RegExp(`^${shelf}\\.[a-z][A-Za-z0-9]*$`));
  });

  it('gives every formula a source, a name, a symbol and a unit', () => {
    for (const f of allFormulas)
      for (const words of [f.source, f.name, f.symbol, f.unit])
        expect(words.trim().length, f.key).toBeGreaterThan(0);
  });

  it(`holds exactly the ${empirical.length} empirical formulas listed, each with the range it holds in`, () => {
    const found = allFormulas.filter((f) => f.empirical);
    expect(found.map((f) => f.key).sort()).toEqual([...empirical].sort());
    for (const f of found) expect(f.validity ?? '', f.key).not.toBe('');
  });
});

describe.each(Object.entries(formulasByShelf))('the %s shelf', (_, list) => {
  it('is not empty', () => {
    expect(list.length).toBeGreaterThan(0);
  });

  it.each(list.map((f) => [f.key, f] as const))(
    `%s: text and code agree on ${runs} draws from seed ${seed}, finite and unchanged on a second run`,
    (_key, f) => {
      expect(symbolFaults(f)).toEqual([]);
      expect(agreementFaults(f, seed, runs)).toEqual([]);
    },
  );

  it.each(list.filter((f) => !f.empirical).map((f) => [f.key, f] as const))(
    '%s: comes out in the unit it states',
    (_key, f) => {
      expect(dimensionFault(f, seed)).toBeNull();
    },
  );
});

describe('the checks bite', () => {
  const right = {
    key: 'gears.example',
    symbol: 'sigma',
    name: 'Stress of a bar',
    unit: 'Pa',
    given: { F: 'N', b: 'm', h: 'm' },
    text: 'F / (b * h)',
    source: 'Definition',
    of: (g: { F: number; b: number; h: number }) => g.F / (g.b * g.h),
  } as const;
  const sound: AnyFormula = formula(right);

  it('lets a sound formula pass', () => {
    expect(symbolFaults(sound)).toEqual([]);
    expect(agreementFaults(sound, seed, runs)).toEqual([]);
    expect(dimensionFault(sound, seed)).toBeNull();
  });

  it('catches code that differs from the text by one part in ten million', () => {
    const wrong: AnyFormula = { ...sound, of: (g: never) => run(sound, g) * (1 + 1e-7) };
    expect(agreementFaults(wrong, seed, runs)).toHaveLength(runs);
  });

  it('catches a wrong unit of the result and a wrong unit of an input', () => {
    expect(dimensionFault({ ...sound, unit: 'N' }, seed)).toContain('stated is N');
    expect(dimensionFault({ ...sound, given: { F: 'N', b: 'm', h: 'm^2' } }, seed)).toContain('stated is Pa');
  });

  it('catches a sum of unlike quantities', () => {
    expect(dimensionFault({ ...sound, text: 'F / (b * h) + F' }, seed)).toContain('Units do not match');
  });

  it('catches a prefix that hides in the unit: the dimension is right, the number a thousand off', () => {
    expect(dimensionFault({ ...sound, unit: 'kPa' }, seed)).toContain('without');
  });

  it('catches a symbol that is not declared, and one that is not used', () => {
    expect(symbolFaults({ ...sound, text: 'F / (b * w)' })).toEqual(['uses w undeclared', 'does not use h']);
  });

  it('catches a residual whose code misses the root', () => {
    const root: AnyFormula = formula({
      ...right,
      symbol: 'r',
      unit: 'm',
      given: { A: 'm^2' },
      text: 'r^2 - A',
      residual: { unit: 'm^2' },
      of: (g) => Math.sqrt(g.A),
    });
    expect(agreementFaults(root, seed, runs)).toEqual([]);
    expect(dimensionFault(root, seed)).toBeNull();
    const off: AnyFormula = { ...root, of: (g: never) => run(root, g) * (1 + 1e-7) };
    expect(agreementFaults(off, seed, runs)).toHaveLength(runs);
    expect(dimensionFault({ ...root, residual: { unit: 'm' } }, seed)).toContain('stated is m');
  });

  it('catches code that gives no number, and code that writes into its inputs', () => {
    expect(agreementFaults({ ...sound, of: () => Number.NaN }, seed, 1)[0]).toContain('gives NaN');
    const writes: AnyFormula = {
      ...sound,
      of: (g: { F: number }) => {
        g.F = 0;
        return 0;
      },
    };
    expect(() => run(writes, draw(sound, seeded(seed)))).toThrow(TypeError);
  });

  it('catches code that gives another number the second time', () => {
    let calls = 0;
    const drifting: AnyFormula = { ...sound, of: (g: never) => run(sound, g) + calls++ };
    expect(agreementFaults(drifting, seed, 1).join()).toContain('two runs differ');
  });
});

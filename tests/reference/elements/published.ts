/** Reads the published cases of machine elements and holds our formulas to them, each in the units of its source. */
import { expect, it } from 'vitest';
import { z } from 'zod';

const turn = 2 * Math.PI;

/** File unit → factor to SI; temperatures have an offset as well. Kept apart from lib/quantity on purpose. */
const toSI: Readonly<Record<string, number>> = {
  '%': 0.01,
  '-': 1,
  '1/K': 1,
  '1/h': 1,
  '1/min': turn / 60,
  '1/s': 1,
  '1e6 rev': 1e6,
  A: 1,
  'A h': 3600,
  'A peak': 1,
  'A/mm2': 1e6,
  F: 1,
  GPa: 1e9,
  Hz: 1,
  J: 1,
  'J/(kg K)': 1,
  'J/K': 1,
  K: 1,
  'K/W': 1,
  'K/s': 1,
  LSB: 1,
  MPa: 1e6,
  'MPa^-b': 1,
  N: 1,
  'N m': 1,
  'N m/A': 1,
  'N m/sqrt(W)': 1,
  'N/cm2': 1e4,
  'N/mm': 1e3,
  V: 1,
  W: 1,
  'W h': 3600,
  Wb: 1,
  cm2: 1e-4,
  cmil: (Math.PI / 4) * 25.4e-6 ** 2,
  'cmil/A': (Math.PI / 4) * 25.4e-6 ** 2,
  cycles: 1,
  dB: 1,
  deg: turn / 360,
  'deg/s': turn / 360,
  'deg/s2': turn / 360,
  'deg/us': turn / 360,
  degC: 1,
  'g cm2': 1e-7,
  h: 3600,
  in: 0.0254,
  in2: 0.0254 ** 2,
  'in^0.5': 0.0254 ** 0.5,
  kN: 1e3,
  kg: 1,
  'kg m2': 1,
  'kg/m3': 1,
  kip: 4448.2216152605,
  'kip in': 4448.2216152605 * 0.0254,
  kpsi: 6894757.293168,
  lbf: 4.4482216152605,
  'lbf ft': 4.4482216152605 * 0.3048,
  'lbf in': 4.4482216152605 * 0.0254,
  m: 1,
  'm/s': 1,
  'mN m': 1e-3,
  'mN m/A': 1e-3,
  mm: 1e-3,
  mm2: 1e-6,
  'mm2/mm': 1e-3,
  'mm^0.5': 1e-3 ** 0.5,
  ms: 1e-3,
  ohm: 1,
  'ohm m': 1,
  'ohm mm2/km': 1e-9,
  'ohm mm2/m': 1e-6,
  'ohm/km': 1e-3,
  psi: 6894.757293168,
  rad: 1,
  'rad/s': 1,
  'rpm/(mN m)': turn / 60 / 1e-3,
  'rpm/V': turn / 60,
  s: 1,
  us: 1e-6,
};

const zeroCelsius = 273.15;
const number = z.union([z.number(), z.array(z.number())]);
const words = z.union([z.string(), z.array(z.string()), z.boolean()]);

const published = z.record(
  z.string(),
  z.strictObject({
    source: z.string().min(1),
    /** seen: read in the source · memory: recalled from it · practice: of the trade, no source · derived: two ways */
    provenance: z.enum(['seen', 'memory', 'practice', 'derived']),
    inputs: z.record(z.string(), z.tuple([z.union([number, words]), z.string()])),
    expected: z.record(z.string(), z.tuple([z.union([number, z.boolean()]), z.string(), z.number()])),
    note: z.string().optional(),
  }),
);

export interface Inputs {
  /** One number in SI. */
  readonly of: (name: string) => number;
  /** A list of numbers in SI. */
  readonly list: (name: string) => readonly number[];
}

/** Works one case: the expected quantities by name, in SI. */
export type Work = (inputs: Inputs) => Readonly<Record<string, number | readonly number[] | boolean>>;

function factor(unit: string): number {
  const found = toSI[unit];
  if (found === undefined) throw new Error(`No factor for ${unit}.`);
  return found;
}

function inputsOf(raw: Readonly<Record<string, readonly [unknown, string]>>): Inputs {
  const entry = (name: string) => {
    const found = raw[name];
    if (found === undefined) throw new Error(`The case has no input ${name}.`);
    const [value, unit] = found;
    const si = (x: unknown) => z.number().parse(x) * factor(unit) + (unit === 'degC' ? zeroCelsius : 0);
    return { value, si };
  };
  return {
    of: (name) => {
      const { value, si } = entry(name);
      return si(value);
    },
    list: (name) => {
      const { value, si } = entry(name);
      return z.array(z.number()).parse(value).map(si);
    },
  };
}

/** Declares one test a case of a file; a case without work, work without a case, and a quantity left out all fail. */
export function holdsTo(file: unknown, works: Readonly<Record<string, Work>>): void {
  const cases = published.parse(file);

  it('works every case of the file and no other', () => {
    expect(Object.keys(works).sort()).toEqual(Object.keys(cases).sort());
  });

  for (const [id, { source, inputs, expected }] of Object.entries(cases)) {
    it(`${id} agrees with ${source}`, () => {
      const work = works[id];
      if (work === undefined) throw new Error(`${id} is not worked.`);
      const results = work(inputsOf(inputs));
      expect(Object.keys(results).sort()).toEqual(Object.keys(expected).sort());
      for (const [name, [target, unit, tolerance]] of Object.entries(expected)) {
        const result = results[name];
        if (typeof target === 'boolean') {
          expect(result, name).toBe(target);
          continue;
        }
        const targets = Array.isArray(target) ? target : [target];
        const found = z.array(z.number()).parse(Array.isArray(result) ? [...result] : [result]);
        expect(found.length, name).toBe(targets.length);
        targets.forEach((wanted, i) => {
          const own = ((found[i] ?? Number.NaN) - (unit === 'degC' ? zeroCelsius : 0)) / factor(unit);
          const off = Math.abs(own - wanted) / Math.abs(wanted);
          expect(off, `${name}[${i}] is ${own} ${unit}, published ${wanted}`).toBeLessThanOrEqual(tolerance);
        });
      }
    });
  }
}

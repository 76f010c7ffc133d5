/** The published gear cases as recorded, and the way between their units and SI. */
import { unit } from 'mathjs';
import { z } from 'zod';
import recorded from '../gears.json';

const numbers = z.union([z.number(), z.array(z.number()), z.array(z.array(z.number())), z.array(z.string())]);
const caseShape = z.object({
  id: z.string(),
  kind: z.enum(['published', 'derived', 'identity', 'table-constant']),
  verified: z.boolean(),
  source: z.string().min(1),
  inputs: z.record(z.string(), z.object({ value: numbers, unit: z.string().optional() })),
  expected: z.record(
    z.string(),
    z.object({
      value: z.union([z.number(), z.array(z.number())]),
      unit: z.string().optional(),
      tol: z.union([z.number(), z.array(z.number())]),
    }),
  ),
});

export type Case = z.infer<typeof caseShape>;
export const cases: readonly Case[] = z.array(caseShape).parse(recorded);

/** The units of the cases: the same in the spelling of mathjs, and the SI unit they become. */
const spelled: Readonly<Record<string, readonly [from: string, si: string]>> = {
  m: ['m', 'm'],
  mm: ['mm', 'm'],
  um: ['um', 'm'],
  in: ['inch', 'm'],
  m2: ['m^2', 'm^2'],
  deg: ['deg', 'rad'],
  'm/s': ['m/s', 'm/s'],
  'ft/min': ['ft/min', 'm/s'],
  N: ['N', 'N'],
  kN: ['kN', 'N'],
  lbf: ['lbf', 'N'],
  'N mm': ['N mm', 'N m'],
  'N/mm': ['N/mm', 'N/m'],
  MPa: ['MPa', 'Pa'],
  psi: ['psi', 'Pa'],
  'mPa s': ['mPa s', 'Pa s'],
  W: ['W', 'W'],
  kW: ['kW', 'W'],
  // The horsepower of these books is the mechanical one, 550 foot pounds-force a second.
  hp: ['550 ft lbf/s', 'W'],
  'K m2/W': ['K m^2/W', 'K m^2/W'],
};

/** Units with an offset, with a fractional power, or that say what they count. */
const written: Readonly<Record<string, readonly [factor: number, offset: number]>> = {
  '-': [1, 0],
  rad: [1, 0],
  '1/min': [(2 * Math.PI) / 60, 0],
  degC: [1, 273.15],
  degF: [5 / 9, 273.15 - (32 * 5) / 9],
  '1/degF': [9 / 5, 0],
  '1/in': [1 / 0.0254, 0],
  'sqrt(MPa)': [1e3, 0],
  'sqrt(psi)': [Math.sqrt(unit(1, 'psi').toNumber('Pa')), 0],
  'K(m/s)^0.75 mm^1.75/W': [1e-3 ** 1.75, 0],
};

function unitScale(name: string): readonly [factor: number, offset: number] {
  const direct = written[name];
  if (direct) return direct;
  const found = spelled[name];
  if (!found) throw new Error(`The unit ${name} is not in the table`);
  return [unit(found[0]).toNumber(found[1]), 0];
}

export function toSI(value: number, name = '-'): number {
  const [factor, offset] = unitScale(name);
  return value * factor + offset;
}

export function fromSI(value: number, name = '-'): number {
  const [factor, offset] = unitScale(name);
  return (value - offset) / factor;
}

export function caseOf(id: string): Case {
  const found = cases.find((c) => c.id === id);
  if (!found) throw new Error(`No case ${id}`);
  return found;
}

/** One input of a case in SI. */
export function input(id: string, name: string): number {
  const list = inputs(id, name);
  const [value] = list;
  if (value === undefined || list.length !== 1) throw new Error(`${id}: ${name} is not one number`);
  return value;
}

/** A list of inputs of a case in SI. */
export function inputs(id: string, name: string): number[] {
  const entry = caseOf(id).inputs[name];
  if (!entry) throw new Error(`${id} has no ${name}`);
  return [entry.value].flat(2).map((value) => {
    if (typeof value !== 'number') throw new Error(`${id}: ${name} is not a number`);
    return toSI(value, entry.unit);
  });
}

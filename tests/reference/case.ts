/** A case as recorded: what its source gives and prints, in the units of the source. How it is worked stands beside it. */
import { z } from 'zod';
import { toSI } from './units';

/**
 * published: read in the source · memory: recalled from it · derived: our own figure, found another way or by evaluating the
 * source's formula · practice: of the trade, no source
 */
const basis = z.enum(['published', 'memory', 'derived', 'practice']);
export type Basis = z.infer<typeof basis>;

const input = z.union([
  z.number(),
  z.string(),
  z.boolean(),
  z.array(z.union([z.number(), z.string(), z.array(z.number())])),
]);

/** A share of the value, or `abs` in the unit of the figure: half a unit of the last printed digit where nothing else is said. */
const tolerance = z.union([z.number(), z.strictObject({ abs: z.union([z.number(), z.array(z.number())]) })]);

/** Value, unit, tolerance and, where it is not that of the case, the basis of this figure. */
const figure = z.union([
  z.tuple([z.union([z.number(), z.array(z.number()), z.boolean()]), z.string(), tolerance]),
  z.tuple([z.union([z.number(), z.array(z.number()), z.boolean()]), z.string(), tolerance, basis]),
]);

export const caseFile = z.record(
  z.string(),
  z.strictObject({
    /** Document, edition, example or table. */
    source: z.string().min(1),
    basis,
    inputs: z.record(z.string(), z.tuple([input, z.string()])),
    expected: z.record(z.string(), figure),
    note: z.string().optional(),
  }),
);
export type Case = z.infer<typeof caseFile>[string];
export type Figure = z.infer<typeof figure>;

export interface Inputs {
  /** One number in SI. */
  readonly of: (name: string) => number;
  /** A list of numbers in SI; a list of lists comes as one. */
  readonly list: (name: string) => readonly number[];
  /** The figures that the case prints. */
  readonly prints: readonly string[];
}

/** Works one case: the figures by name, in SI. */
export type Work = (i: Inputs) => Readonly<Record<string, number | readonly number[] | boolean>>;
export type Works = Readonly<Record<string, Work>>;

export function inputsOf(recorded: Case): Inputs {
  const list = (name: string) => {
    const found = recorded.inputs[name];
    if (found === undefined) throw new Error(`The case has no input ${name}.`);
    return [found[0]].flat(2).map((value) => toSI(z.number().parse(value), found[1]));
  };
  return {
    list,
    prints: Object.keys(recorded.expected),
    of: (name) => {
      const [value, ...more] = list(name);
      if (value === undefined || more.length > 0) throw new Error(`${name} is not one number.`);
      return value;
    },
  };
}

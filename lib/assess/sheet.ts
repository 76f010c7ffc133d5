// The worked sheet: every formula is worked through here, so that each number can be followed to its inputs.
import type { Formula, Given } from '@/lib/calc/formula';
import type { Traced } from '@/lib/quantity/traced';
import type { SectionKey, Step, StepInput } from './assessment';

type Inputs<G extends Given> = { readonly [K in keyof G]: Traced };

/**
 * Works formulas and, when recording, keeps each step. Without recording the arithmetic is the same and nothing
 * is kept, so both ways give the same numbers.
 */
export class Sheet {
  readonly steps: Step[] = [];
  constructor(readonly recording: boolean) {}

  /**
   * Works one formula on traced SI inputs for the part at path `at`. The result is traced to this step.
   * Two results with one symbol at one place are told apart by `as`, e.g. `T.hold`. A result that is not a number,
   * outside the formula's range, is returned but not kept: whoever asked for it says why there is none.
   */
  work<const G extends Given>(
    section: SectionKey,
    at: string,
    formula: Formula<G>,
    inputs: Inputs<G>,
    as: string = formula.symbol,
    note: string | null = null,
  ): Traced {
    const plain = numbersOf(formula);
    for (const symbol in inputs) plain[symbol] = inputs[symbol].value;
    // `plain` has exactly the symbols of `inputs`, which the type ties to those of the formula.
    const value = formula.of(plain as { [K in keyof G]: number });
    const key = `${at}.${as}`;
    if (this.recording && Number.isFinite(value)) {
      const listed: StepInput[] = [];
      for (const symbol in inputs) {
        const { value: given, from } = inputs[symbol];
        listed.push({ symbol, value: given, from });
      }
      this.steps.push({ key, section, at, formula: formula.key, inputs: listed, value, note });
    }
    return { value, from: `step:${key}` };
  }
}

/** The object in which a formula is handed its numbers: one a formula, filled anew at each working, since formulas keep nothing. */
const handed = new WeakMap<object, Record<string, number>>();

function numbersOf(formula: object): Record<string, number> {
  let plain = handed.get(formula);
  if (plain === undefined) {
    plain = {};
    handed.set(formula, plain);
  }
  return plain;
}

/** A value of a cited table that is not of one material, with what it is and where it comes from. */
export function cited(table: { readonly value: number; readonly source: string }, what: string): Traced {
  return practice(table.value, `${what}, ${table.source}`);
}

/** A constant of the trade, with the words that say where it comes from. */
export function practice(value: number, words: string): Traced {
  return { value, from: `practice:${words}` };
}

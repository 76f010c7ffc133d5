// One way of working formulas for two purposes: on plain numbers, to find the worst of many cases, and on traced ones
// through the sheet, so that every number of that case can be followed. Both run the same code.
import type { Formula, Given } from '@/lib/calc/formula';
import type { Traced } from '@/lib/quantity/traced';
import type { Sheet } from '../../sheet';

export interface Engine<V> {
  /** What a traced number is to this engine. */
  read(traced: Traced): V;
  /** The plain number behind a value. */
  size(value: V): number;
  /** Works one formula; symbol and name tell its step from others of the same part. */
  work<const G extends Given>(
    formula: Formula<G>,
    inputs: { readonly [K in keyof G]: V },
    symbol: string,
    name: string,
  ): V;
}

/** Nothing is kept. */
export const plain: Engine<number> = {
  read: ({ value }) => value,
  size: (value) => value,
  work: (formula, inputs) => formula.of(inputs),
};

/** Each step is kept for the part at `at`; `tail` tells the cases of one part apart. */
export function onSheet(sheet: Sheet, at: string, tail: string): Engine<Traced> {
  return {
    read: (traced) => traced,
    size: ({ value }) => value,
    work: (formula, inputs, symbol, name) =>
      sheet.work('shafts', at, formula, inputs, `${symbol}.${name}${tail}`),
  };
}

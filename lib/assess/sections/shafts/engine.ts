// Two ways of working the same formulas: through the sheet, so that every number can be followed, and on plain numbers,
// quickly, for the many cases of which one counts. Results come out the same, named for the step that gives them.
import type { Formula, Given } from '@/lib/calc/formula';
import type { Traced } from '@/lib/quantity/traced';
import type { Sheet } from '../../sheet';

type Inputs<G extends Given, V> = { readonly [K in keyof G]: V };

export interface Engine<V> {
  /** What a traced number is to this engine. */
  read(traced: Traced): V;
  /** The plain number behind a value. */
  size(value: V): number;
  /** Works one formula; symbol and name tell its step from others of the same part. */
  work<const G extends Given>(formula: Formula<G>, inputs: Inputs<G, V>, symbol: string, name: string): V;
  /** The same for what is read from the outside. */
  result<const G extends Given>(
    formula: Formula<G>,
    inputs: Inputs<G, V>,
    symbol: string,
    name: string,
  ): Traced;
}

/** Where the steps of one case are kept: the part, and what tells its cases apart. */
export interface Place {
  readonly at: string;
  readonly tail: string;
}

export function quick({ at, tail }: Place): Engine<number> {
  return {
    read: ({ value }) => value,
    size: (value) => value,
    work: (formula, inputs) => formula.of(inputs),
    result: (formula, inputs, symbol, name) => ({
      value: formula.of(inputs),
      from: `step:${at}.${symbol}.${name}${tail}`,
    }),
  };
}

export function onSheet(sheet: Sheet, { at, tail }: Place): Engine<Traced> {
  const work: Engine<Traced>['work'] = (formula, inputs, symbol, name) =>
    sheet.work('shafts', at, formula, inputs, `${symbol}.${name}${tail}`);
  return { read: (traced) => traced, size: ({ value }) => value, work, result: work };
}

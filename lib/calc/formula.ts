// A formula is a value: the text a reviewer reads and the code that runs, side by side.
// tests/laws/formulas.law.test.ts proves for every registered formula that the two agree and that
// the dimensions of the text come out as `unit` says.

/** A formula's inputs: symbol → SI unit ('1' for a plain number, angles in 'rad'). */
export type Given = Readonly<Record<string, string>>;

export interface Formula<G extends Given = Given> {
  /** Stable name: shelf and formula, e.g. `gears.rootStress`. Links in worked sheets point at it. */
  readonly key: string;
  /** Symbol of the result as the standard writes it, e.g. `sigma_F`. */
  readonly symbol: string;
  /** What it computes, in the trade's words. */
  readonly name: string;
  /** SI unit of the result, as mathjs spells it ('Pa', 'N m', '1', 'rad'). */
  readonly unit: string;
  readonly given: G;
  /** The expression as a reviewer reads it, in mathjs syntax, over the symbols of `given`. */
  readonly text: string;
  /** Document, edition, clause or table; says so when the value is from memory. */
  readonly source: string;
  /** Where it holds, in words; empty when it holds wherever it is finite. */
  readonly validity?: string;
  /** True when the text holds only in the stated units, so that dimensions cannot be proven. */
  readonly empirical?: true;
  /**
   * For a result found by iteration or by cases: `text` is then the residual, an expression over `given` and
   * the result's own symbol that is zero (dimension as stated by `residualUnit`) at the solution.
   */
  readonly residual?: { readonly unit: string };
  /** Ranges for the laws suite to draw inputs from: symbol → [low, high]; default [0.1, 10]. */
  readonly domain?: Readonly<Partial<Record<keyof G & string, readonly [number, number]>>>;
  /** The arithmetic. Plain numbers in SI; allocates nothing beyond its argument. */
  readonly of: (g: { readonly [K in keyof G]: number }) => number;
}

/** Declares a formula. The types tie the code's inputs to the symbols that `given` names. */
export function formula<const G extends Given>(f: Formula<G>): Formula<G> {
  return f;
}

/** Any formula, for registries and readers that do not call it with typed inputs. */
export type AnyFormula = Omit<Formula, 'of' | 'domain'> & {
  readonly domain?: Readonly<Record<string, readonly [number, number] | undefined>>;
  readonly of: (g: never) => number;
};

/** Formulas of a shelf that belong to one topic, under the heading that readers find them by. */
export interface FormulaTopic {
  readonly key: string;
  readonly label: string;
  readonly formulas: readonly AnyFormula[];
}

// What a trace is set with: the steps themselves, and the words and addresses that the page knows.
import type { CatalogRow } from '@/lib/assess/trace/rows';
import type { Root } from '@/lib/assess/trace/subject';
import type { Trace, TracedStep } from '@/lib/assess/trace/trace';
import type { AnyFormula } from '@/lib/calc/formula';

export interface TraceSetting {
  readonly trace: Trace<Root>;
  /** Begins every id, so that several traces can stand on one page. */
  readonly id: string;
  /** Formulas of the library by key. */
  readonly formulas: ReadonlyMap<string, AnyFormula>;
  /** Words for the path of a part, e.g. `Stage 3, pinion`. */
  readonly partLabel: (path: string) => string;
  /** Words of a field, and its place on the sheet. */
  readonly field: (path: string) => { readonly text: string; readonly href: string };
  /** A field as it was entered; undefined when the document no longer has it. */
  readonly entered: (path: string) => string | undefined;
  readonly row: (key: string) => CatalogRow | undefined;
  /** Address of the handbook's row of a material. */
  readonly rowHref: (key: string) => string;
  /** Address of the handbook's entry of a formula. */
  readonly formulaHref: (key: string) => string;
}

/** Id of a step within the page. */
export function stepId({ id }: TraceSetting, number: number): string {
  return `${id}-${number}`;
}

/** What a step gives, in the trade's words. */
export function stepName({ formulas }: TraceSetting, { step }: TracedStep): string {
  return formulas.get(step.formula)?.name ?? step.formula;
}

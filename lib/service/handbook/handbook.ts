// The handbook: what the calculations rest on. Open to everyone, since it holds nothing of any club.
import {
  type FormulaShelf,
  formulaShelves,
  formulas,
  type MaterialSheet,
  materialSheets,
  type RuleEntry,
  ruleEntries,
} from '@/lib/assess/library';
import { methodLog, methodVersion } from '@/lib/assess/method';

export interface HandbookView {
  readonly method: string;
  /** What each version of the method moved, newest first. */
  readonly log: typeof methodLog;
  readonly shelves: readonly FormulaShelf[];
  readonly materials: readonly MaterialSheet[];
  readonly rules: readonly RuleEntry[];
}

/** Formulas and materials of the present method. */
export function handbook(): HandbookView {
  return {
    method: methodVersion,
    log: methodLog,
    shelves: formulaShelves(),
    materials: materialSheets(),
    rules: ruleEntries(),
  };
}

/** Formulas by key, for the worked sheet. */
export function handbookFormulas(): ReturnType<typeof formulas> {
  return formulas();
}

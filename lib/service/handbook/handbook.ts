// The handbook: what the calculations rest on. Open to everyone, since it holds nothing of any club.
import {
  type FormulaShelf,
  formulaShelves,
  formulas,
  type MaterialSheet,
  materialBases,
  materialSheets,
  type RuleEntry,
  ruleEntries,
} from '@/lib/assess/library';
import { methodLog, methodVersion } from '@/lib/assess/method';
import { catalogRow } from '@/lib/assess/trace/rows';

export interface HandbookView {
  readonly method: string;
  /** What each version of the method moved, newest first. */
  readonly log: typeof methodLog;
  readonly shelves: readonly FormulaShelf[];
  readonly materials: readonly MaterialSheet[];
  readonly bases: ReturnType<typeof materialBases>;
  readonly rules: readonly RuleEntry[];
}

/** Formulas and materials of the present method. */
export function handbook(): HandbookView {
  return {
    method: methodVersion,
    log: methodLog,
    shelves: formulaShelves(),
    materials: materialSheets(),
    bases: materialBases(),
    rules: ruleEntries(),
  };
}

/** A row of the catalogue that a worked step names, in words; undefined for a name that no table has. */
export function handbookRow(key: string): ReturnType<typeof catalogRow> {
  return catalogRow(key);
}

/** Formulas by key, for the worked sheet. */
export function handbookFormulas(): ReturnType<typeof formulas> {
  return formulas();
}

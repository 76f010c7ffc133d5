// The way back from one number of a sheet to what was entered.
import type { CatalogRow } from '@/lib/assess/trace/rows';
import type { Root, Subject } from '@/lib/assess/trace/subject';
import type { Trace } from '@/lib/assess/trace/trace';
import type { Design } from '@/lib/design/document';

export interface TraceView {
  readonly design: string;
  /** `A`, `B` … or `draft`. */
  readonly side: string;
  readonly document: Design;
  /** Hashes of the document and of the assessment; a draft has no assessment of its own yet. */
  readonly hashes: readonly string[];
  readonly subject: Subject;
  readonly trace: Trace<Root>;
  /** Every field that the trace ends at, by path, as it was entered, e.g. `17` or `2.5 mm`. */
  readonly entered: ReadonlyMap<string, string>;
  /** Every row of the catalogue that it ends at, by key. */
  readonly rows: ReadonlyMap<string, CatalogRow>;
}

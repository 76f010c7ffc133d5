// What a comparison is: two assessed documents set side by side, in fields and in consequences. Plain JSON.
import type { CheckStatus, Direction, Finding, Headline, Mode, SectionKey } from '@/lib/assess/assessment';
import type { FieldValue } from '@/lib/design/walk';
import type { UnitKey } from '@/lib/quantity/units';

export interface ChangedField {
  readonly path: string;
  readonly label: string;
  /** Labels from the outside in, e.g. `['Train', 'Stage 2', 'Shaft behind the stage', 'Bearing A']`. */
  readonly trail: readonly string[];
  /** Both as printed with their unit; '–' for unknown. */
  readonly before: string;
  readonly after: string;
  readonly rawBefore: FieldValue;
  readonly rawAfter: FieldValue;
  /** Its part was of another shape before, which had no such field. */
  readonly isNew: boolean;
}

/** An item of a list that came, went or moved: a stage, a load, a coupon test. */
export interface ChangedItem {
  /** Path of the list, e.g. `train.stages`. */
  readonly list: string;
  /** What one of it is called, e.g. `Stage`. */
  readonly item: string;
  readonly id: string;
  readonly kind: 'added' | 'removed' | 'moved';
  /** Places in the list, counted from 1; null where the item is not there. */
  readonly from: number | null;
  readonly to: number | null;
  /** What it is, in a few words; may be empty. */
  readonly words: string;
}

export type Verdict = 'better' | 'worse' | 'neither';

export interface ChangedFigure {
  readonly key: string;
  readonly section: SectionKey;
  readonly label: string;
  readonly unit: UnitKey;
  /** SI; null when not assessed or not there. */
  readonly before: number | null;
  readonly after: number | null;
  readonly change: number | null;
  /** change ÷ |before|; null when before is 0 or unknown. */
  readonly relative: number | null;
  readonly better: Direction;
  readonly verdict: Verdict;
}

export interface ChangedCheck {
  readonly key: string;
  readonly section: SectionKey;
  readonly label: string;
  readonly mode: Mode;
  /** Required now; where the check is gone, as it was. */
  readonly required: number;
  /** Required before; null where the check was not there. */
  readonly requiredBefore: number | null;
  readonly factorBefore: number | null;
  readonly factorAfter: number | null;
  readonly statusBefore: CheckStatus | null;
  readonly statusAfter: CheckStatus | null;
  readonly holdsToBefore: number | null;
  readonly holdsToAfter: number | null;
  readonly change: number | null;
  readonly relative: number | null;
  readonly verdict: Verdict;
  /** It passed its required factor in one direction or became (un)assessed. */
  readonly crossed: boolean;
}

export interface Comparison {
  readonly methodBefore: string;
  readonly methodAfter: string;
  readonly fields: readonly ChangedField[];
  readonly items: readonly ChangedItem[];
  readonly figures: readonly ChangedFigure[];
  readonly checks: readonly ChangedCheck[];
  readonly raised: readonly Finding[];
  readonly cleared: readonly Finding[];
  /** Findings in both whose words changed. */
  readonly restated: readonly { readonly before: Finding; readonly after: Finding }[];
  readonly headlineBefore: Headline & { readonly label: string | null };
  readonly headlineAfter: Headline & { readonly label: string | null };
}

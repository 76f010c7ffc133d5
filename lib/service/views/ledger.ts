// The ledger of a club: every change of state, chained by hashes.
import type { ClubView, PersonView } from './heads';

export interface LedgerRow {
  readonly seq: number;
  readonly at: string;
  /** Null for what the service did by itself. */
  readonly actor: PersonView | null;
  readonly kind: string;
  /** The kind in words. */
  readonly label: string;
  readonly subject: string;
  readonly data: unknown;
  readonly hash: string;
}

export interface LedgerView {
  readonly club: ClubView;
  /** Newest first. */
  readonly rows: readonly LedgerRow[];
  /** Pass as `before` for the next page; null at the end. */
  readonly older: number | null;
  readonly head: { readonly seq: number; readonly hash: string } | null;
}

export interface LedgerVerdict {
  readonly club: string;
  readonly events: number;
  readonly intact: boolean;
  /** First event that does not fit, with the reason; null when intact. */
  readonly broken: { readonly seq: number; readonly sentence: string } | null;
  readonly head: string | null;
}

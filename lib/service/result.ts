// What every use case answers: a value, or a refusal with a stable code.
import type { FailureCode } from './failures';

export interface Failure {
  readonly code: FailureCode;
  /** A sentence for this case, where the table's own is too general. */
  readonly sentence?: string;
  /** Sentences by name or path of the input they are about. */
  readonly fields?: Readonly<Record<string, string>>;
  /** What the person needs in order to go on, e.g. the draft as it now stands (`draft.stale`). */
  readonly detail?: unknown;
}

export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly error: Failure };

export function done<T>(value: T): Result<T> {
  return { ok: true, value };
}

export function refused(code: FailureCode, more: Omit<Failure, 'code'> = {}): Result<never> {
  return { ok: false, error: { code, ...more } };
}

// What a command comes to: an exit code and what it prints. Commands return it; only the entry writes and exits.

export interface Outcome {
  /** 0 done; 1 the thing looked at is not in order; 2 what was given cannot be used. */
  readonly code: 0 | 1 | 2;
  readonly out: string;
  readonly err: string;
}

export function done(out: string): Outcome {
  return { code: 0, out, err: '' };
}

/** What was given cannot be used, with the sentences that say why. */
export function refused(...lines: readonly string[]): Outcome {
  return { code: 2, out: '', err: `${lines.join('\n')}\n` };
}

/** A value as JSON that a person can read too. The same value always gives the same bytes. */
export function json(value: unknown): string {
  return `${JSON.stringify(value, null, 2)}\n`;
}

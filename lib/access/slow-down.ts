// Slowing down guesses: each failure beyond the free ones makes the next attempt wait longer, never for good.
import { createHash } from 'node:crypto';

export interface Pace {
  /** Failures that cost nothing: people mistype. */
  readonly free: number;
  /** Wait after the first failure beyond the free ones, in seconds; doubles with each. */
  readonly first: number;
  /** Longest wait, in seconds. */
  readonly longest: number;
}

/** After this long without a failure the count starts anew, in seconds. */
export const forgottenAfter = 3600;

export const paces = {
  // One person's account from one address: a stranger elsewhere cannot slow the person down.
  account: { free: 5, first: 2, longest: 300 },
  // One address over all accounts: catches one password being tried on everyone; a club room shares an address.
  address: { free: 30, first: 2, longest: 120 },
  // Asking after invitations from one address.
  invitation: { free: 20, first: 2, longest: 300 },
  // Each invitation written counts, so that a club cannot be used to send mail in bulk.
  inviting: { free: 30, first: 10, longest: 600 },
  // Remarks by person: fast enough for the busiest review, too slow to fill the record by a script.
  remark: { free: 200, first: 1, longest: 30 },
  // Passwords at signing, by person: they are signed in already, so nobody else can use it up.
  signing: { free: 5, first: 2, longest: 300 },
} as const satisfies Record<string, Pace>;

export type PaceKey = keyof typeof paces;

/** Seconds to wait after the given number of failures. */
export function waitAfter(failures: number, pace: Pace): number {
  if (failures <= pace.free) return 0;
  return Math.min(pace.longest, pace.first * 2 ** (failures - pace.free - 1));
}

/** The waits after the first, second, third … attempt, up to where they no longer grow; in seconds. */
export function waitsOf(pace: Pace): number[] {
  const waits: number[] = [];
  do waits.push(waitAfter(waits.length + 1, pace));
  while (waits.at(-1) !== pace.longest);
  return waits;
}

/** What attempts have in common, as a hash: the table of attempts holds no addresses and no names. */
export function attemptKey(pace: PaceKey, ...parts: readonly string[]): string {
  return createHash('sha256')
    .update(JSON.stringify([pace, ...parts]))
    .digest('hex');
}

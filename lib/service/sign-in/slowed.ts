// Attempts that are slowed down: counted in the database, so over every process of the service.
import { attemptKey, forgottenAfter, type PaceKey, paces, waitsOf } from '@/lib/access/slow-down';
import { reader } from '@/lib/store/database';
import { beginAttempt, forgetAttempts, uncountAttempt } from '@/lib/store/people/attempts';
import { type Result, refused } from '../result';

export interface Counted {
  readonly pace: PaceKey;
  /** What such attempts have in common, e.g. account and address. */
  readonly parts: readonly string[];
}

/**
 * Runs the work unless earlier attempts still make these wait. Each attempt is counted under every key before it is made;
 * a success forgets the first key and takes the count under the others back.
 */
export async function slowed<T>(
  counted: readonly [Counted, ...Counted[]],
  work: () => Promise<Result<T>>,
): Promise<Result<T>> {
  for (const one of counted) {
    const waiting = await begin(one);
    if (waiting !== null) return waiting;
  }
  const result = await work();
  if (!result.ok) return result;
  const [first, ...others] = counted;
  await forgetAttempts(reader(), keyOf(first));
  for (const other of others) await uncountAttempt(reader(), keyOf(other));
  return result;
}

/** Runs the work and counts it, whatever comes of it: for what must not be done in bulk. */
export async function rationed<T>(counted: Counted, work: () => Promise<Result<T>>): Promise<Result<T>> {
  return (await begin(counted)) ?? work();
}

async function begin(counted: Counted): Promise<Result<never> | null> {
  const waits = { seconds: waitsOf(paces[counted.pace]), forgottenAfter };
  const until = await beginAttempt(reader(), keyOf(counted), waits);
  if (until === null) return null;
  const seconds = Math.max(1, Math.ceil((until.getTime() - Date.now()) / 1000));
  const wait = seconds === 1 ? 'one second' : `${seconds} seconds`;
  return refused('rate.limited', {
    sentence: `Too many attempts; please wait ${wait} and try again.`,
    detail: { seconds },
  });
}

function keyOf({ pace, parts }: Counted): string {
  return attemptKey(pace, ...parts);
}

// Attempts that are slowed down when they fail: counted in the database, so over every process of the service.
import { attemptKey, forgottenAfter, type PaceKey, paces, waitAfter } from '@/lib/access/slow-down';
import { reader } from '@/lib/store/database';
import { countFailure, forgetAttempts, refusedUntil, refuseFor } from '@/lib/store/people/attempts';
import { type Result, refused } from '../result';

export interface Counted {
  readonly pace: PaceKey;
  /** What such attempts have in common, e.g. account and address. */
  readonly parts: readonly string[];
}

/**
 * Runs the work unless an earlier failure still makes these attempts wait. A refusal counts as a failure under every key; a
 * success forgets the first.
 */
export async function slowed<T>(
  counted: readonly [Counted, ...Counted[]],
  work: () => Promise<Result<T>>,
): Promise<Result<T>> {
  const waiting = await stillWaiting(counted);
  if (waiting !== null) return waiting;
  const result = await work();
  if (!result.ok) await Promise.all(counted.map(countOne));
  else await forgetAttempts(reader(), keyOf(counted[0]));
  return result;
}

/** Runs the work and counts it, whatever comes of it: for what must not be done in bulk. */
export async function rationed<T>(counted: Counted, work: () => Promise<Result<T>>): Promise<Result<T>> {
  const waiting = await stillWaiting([counted]);
  if (waiting !== null) return waiting;
  await countOne(counted);
  return work();
}

async function stillWaiting(counted: readonly Counted[]): Promise<Result<never> | null> {
  const until = await refusedUntil(reader(), counted.map(keyOf));
  if (until === null) return null;
  const seconds = Math.max(1, Math.ceil((until.getTime() - Date.now()) / 1000));
  const wait = seconds === 1 ? 'one second' : `${seconds} seconds`;
  return refused('rate.limited', {
    sentence: `Too many attempts; please wait ${wait} and try again.`,
    detail: { seconds },
  });
}

async function countOne(counted: Counted): Promise<void> {
  const key = keyOf(counted);
  const failures = await countFailure(reader(), key, forgottenAfter);
  const wait = waitAfter(failures, paces[counted.pace]);
  if (wait > 0) await refuseFor(reader(), key, wait);
}

function keyOf({ pace, parts }: Counted): string {
  return attemptKey(pace, ...parts);
}

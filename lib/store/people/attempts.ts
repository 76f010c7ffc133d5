// Attempts by key, in the database, so that every process of the service counts together.
import type { Database } from '../database';

export interface Waits {
  /** Seconds to wait after each attempt: the first element after the first one, and so on; the last for all beyond. */
  readonly seconds: readonly number[];
  /** After this long without an attempt the count starts anew, in seconds. */
  readonly forgottenAfter: number;
}

/**
 * Counts an attempt before it is made, so that a burst at one moment is held back as a row of single ones is. Gives null
 * when it may be made, or the moment until which it may not; a refused attempt is not counted. The clock is read when
 * the row is free: now() would be older than the `until` of an attempt that started later and counted first.
 */
export async function beginAttempt(db: Database, key: string, waits: Waits): Promise<Date | null> {
  const seconds = [...waits.seconds];
  const counted = await db.$queryRaw<unknown[]>`
    INSERT INTO attempt AS a (key, failures, until, updated_at)
    VALUES (${key}, 1, now() + make_interval(secs => (${seconds}::float8[])[1]), now())
    ON CONFLICT (key) DO UPDATE SET
      failures = CASE WHEN a.updated_at < now() - make_interval(secs => ${waits.forgottenAfter}::float8)
        THEN 1 ELSE a.failures + 1 END,
      until = now() + make_interval(secs => (${seconds}::float8[])[
        CASE WHEN a.updated_at < now() - make_interval(secs => ${waits.forgottenAfter}::float8)
        THEN 1 ELSE least(a.failures + 1, ${seconds.length}::int) END]),
      updated_at = now()
    WHERE a.until <= clock_timestamp()
    RETURNING a.key`;
  if (counted.length > 0) return null;
  const rows = await db.$queryRaw<{ until: Date }[]>`SELECT until FROM attempt WHERE key = ${key}`;
  return rows[0]?.until ?? new Date();
}

/** Forgets a key after a success, and whatever is older than a day. */
export async function forgetAttempts(db: Database, key: string): Promise<void> {
  await db.$executeRaw`DELETE FROM attempt WHERE key = ${key} OR updated_at < now() - interval '1 day'`;
}

/** Takes the count of one attempt back, because it was no failure; a wait that runs goes on. */
export async function uncountAttempt(db: Database, key: string): Promise<void> {
  await db.$executeRaw`UPDATE attempt SET failures = greatest(0, failures - 1) WHERE key = ${key}`;
}

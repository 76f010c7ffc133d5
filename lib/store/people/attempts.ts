// Failed attempts by key, in the database, so that every process of the service counts together.
import type { Database } from '../database';

/** Until when attempts with any of these keys are refused; null when none is. */
export async function refusedUntil(db: Database, keys: readonly string[]): Promise<Date | null> {
  const rows = await db.$queryRaw<{ until: Date | null }[]>`
    SELECT max(until) AS until FROM attempt WHERE key = ANY(${[...keys]}) AND until > now()`;
  return rows[0]?.until ?? null;
}

/** Counts one more failure and gives the count; one older than `forgottenAfter` seconds starts anew. */
export async function countFailure(db: Database, key: string, forgottenAfter: number): Promise<number> {
  const rows = await db.$queryRaw<{ failures: number }[]>`
    INSERT INTO attempt (key, failures, until, updated_at) VALUES (${key}, 1, now(), now())
    ON CONFLICT (key) DO UPDATE SET
      failures = CASE WHEN attempt.updated_at < now() - make_interval(secs => ${forgottenAfter}::float8) THEN 1
        ELSE attempt.failures + 1 END,
      updated_at = now()
    RETURNING failures`;
  return rows[0]?.failures ?? 1;
}

/** Refuses further attempts for some seconds. */
export async function refuseFor(db: Database, key: string, seconds: number): Promise<void> {
  await db.$executeRaw`
    UPDATE attempt SET until = now() + make_interval(secs => ${seconds}::float8) WHERE key = ${key}`;
}

/** Forgets a key after a success, and whatever is older than a day. */
export async function forgetAttempts(db: Database, key: string): Promise<void> {
  await db.$executeRaw`DELETE FROM attempt WHERE key = ${key} OR updated_at < now() - interval '1 day'`;
}

// The one connection to Postgres: a pool shared by the whole process, a reader and a way to work in a transaction.
import { PrismaPg } from '@prisma/adapter-pg';
import pg from 'pg';
import { Prisma, PrismaClient } from '@/generated/prisma/client';

/** What a repository works on: the shared client or a transaction. */
export type Database = Prisma.TransactionClient;

interface Store {
  readonly pool: pg.Pool;
  readonly client: PrismaClient;
}

// On globalThis, because a development server loads this file anew at each change and must not open a pool each time.
const shared = globalThis as typeof globalThis & { pawlStore?: Store };

function store(): Store {
  shared.pawlStore ??= open();
  return shared.pawlStore;
}

function open(): Store {
  const connectionString = process.env.DATABASE_URL;
  if (connectionString === undefined || connectionString === '') throw new Error('DATABASE_URL is not set.');
  const pool = new pg.Pool({
    connectionString,
    max: 10,
    connectionTimeoutMillis: 5_000,
    statement_timeout: 15_000,
    idle_in_transaction_session_timeout: 30_000,
  });
  // A connection that breaks while idle is replaced at the next use; without a listener it would end the process.
  pool.on('error', () => {});
  return { pool, client: new PrismaClient({ adapter: new PrismaPg(pool) }) };
}

export function reader(): Database {
  return store().client;
}

/**
 * Asks a question of nearly every request, past the client and prepared once a connection: that takes half the time.
 * @param name of the prepared statement, one for each text
 */
export async function askOften<T extends pg.QueryResultRow>(
  name: string,
  text: string,
  values: readonly unknown[],
): Promise<T[]> {
  return (await store().pool.query<T>({ name, text, values: [...values] })).rows;
}

/**
 * Runs the work in one transaction (read committed; rows that matter are locked by who reads them). It is rolled back when
 * the work throws, and tried again, at most twice, when Postgres broke a deadlock.
 */
export async function inTransaction<T>(work: (tx: Database) => Promise<T>): Promise<T> {
  for (let attempt = 1; ; attempt++) {
    try {
      // Waiting for a connection may take a while when twenty people publish at once.
      return await store().client.$transaction(work, { maxWait: 10_000, timeout: 20_000 });
    } catch (error) {
      if (attempt >= 3 || !isDeadlock(error)) throw error;
    }
  }
}

/** Runs several reads on one unchanging state of the database; nothing can be written. */
export function inSnapshot<T>(work: (tx: Database) => Promise<T>): Promise<T> {
  return store().client.$transaction(
    async (tx) => {
      await tx.$executeRaw`SET TRANSACTION READ ONLY`;
      return work(tx);
    },
    { isolationLevel: 'RepeatableRead', maxWait: 10_000, timeout: 120_000 },
  );
}

/** Whether Postgres refused because a row of this kind is already there (unique constraint). */
export function isDuplicate(error: unknown): boolean {
  return error instanceof Prisma.PrismaClientKnownRequestError && error.code === 'P2002';
}

function isDeadlock(error: unknown): boolean {
  return error instanceof Prisma.PrismaClientKnownRequestError && error.code === 'P2034';
}

/** How long a trivial question takes, in milliseconds. Throws when the database does not answer. */
export async function pingDatabase(): Promise<number> {
  const before = performance.now();
  await store().pool.query('SELECT 1');
  return performance.now() - before;
}

/** Closes the pool, so that a command can end. */
export async function closeDatabase(): Promise<void> {
  const open = shared.pawlStore;
  if (open === undefined) return;
  delete shared.pawlStore;
  await open.client.$disconnect();
  await open.pool.end();
}

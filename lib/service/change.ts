// A change of state: everything in one transaction, or nothing. A refusal undoes what was done before it.
import { type Database, inTransaction } from '@/lib/store/database';
import type { Result } from './result';

class Undo<T> extends Error {
  constructor(readonly result: Result<T>) {
    super('refused');
  }
}

/** Runs the work in a transaction that is kept only when its result is a value. */
export async function change<T>(work: (tx: Database) => Promise<Result<T>>): Promise<Result<T>> {
  try {
    return await inTransaction(async (tx) => {
      const result = await work(tx);
      if (!result.ok) throw new Undo(result);
      return result;
    });
  } catch (error) {
    if (error instanceof Undo) return error.result;
    throw error;
  }
}

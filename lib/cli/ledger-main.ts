// The command line of the ledger, apart from the rest because it needs a database.
import { ledgerCommand } from './commands/ledger';
import { refused } from './outcome';
import { print } from './print';

/** Runs one command and returns its exit code. */
export async function run([, ...args]: readonly string[]): Promise<number> {
  try {
    return await print(await ledgerCommand(args));
  } catch (error) {
    const why = error instanceof Error ? error.message.trim() : String(error);
    return print(refused('The ledger could not be read from the database.', why));
  }
}

// The command line of the ledger, apart from the rest because it needs a database.
import { ledgerCommand } from './commands/ledger';
import { print } from './print';

/** Runs one command and returns its exit code. */
export async function run([, ...args]: readonly string[]): Promise<number> {
  return print(await ledgerCommand(args));
}

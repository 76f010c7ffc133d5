// The command line of what is kept, apart from the rest because it needs a database.
import { clubCommand } from './commands/club';
import { ledgerCommand } from './commands/ledger';
import { refused } from './outcome';
import { print } from './print';

/** Runs one command and returns its exit code. */
export async function run([name, ...args]: readonly string[]): Promise<number> {
  try {
    return await print(await (name === 'club' ? clubCommand(args) : ledgerCommand(args)));
  } catch (error) {
    const why = error instanceof Error ? error.message.trim() : String(error);
    return print(refused('The database could not be used.', why));
  }
}

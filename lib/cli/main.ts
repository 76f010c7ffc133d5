// The command line, all commands that need no database.
import { assessCommand } from './commands/assess';
import { compareCommand } from './commands/compare';
import { schemaCommand } from './commands/schema';
import { starterCommand } from './commands/starter';
import { done, type Outcome, refused } from './outcome';
import { print } from './print';

const commands: Readonly<Record<string, (args: readonly string[]) => Outcome>> = {
  assess: assessCommand,
  compare: compareCommand,
  starter: starterCommand,
  schema: schemaCommand,
};

const usage = `npm run -s assess  -- FILE         the assessment of a design as JSON; - reads standard input
npm run -s compare -- EARLIER LATER  what changed between two designs as JSON
npm run -s starter -- [NAME]       a starter design as JSON, or the names of all
npm run -s schema                  the design document as JSON Schema
npm run -s ledger  -- verify [--club CODE]   whether the ledger's chain holds
npm run -s club    -- found CODE NAME E-MAIL STEWARD   a new club with its first steward`;

/** Runs one command and returns its exit code. */
export function run(args: readonly string[]): Promise<number> {
  return print(outcome(args));
}

function outcome([name, ...args]: readonly string[]): Outcome {
  if (name === undefined) return refused('A command is needed.', usage);
  if (name === 'help' || name === '--help' || name === '-h') return done(`${usage}\n`);
  const command = Object.hasOwn(commands, name) ? commands[name] : undefined;
  return command === undefined ? refused(`There is no command “${name}”.`, usage) : command(args);
}

// @ts-check
// node scripts/migrate.mjs deploy | new <name> | check | resolve <name>
// Works on DATABASE_URL, else on the embedded database of the data folder (started for the moment if it is down).
import path from 'node:path';
import { deploy, outstanding, resolveFailed, writeNew } from './migrate/commands.mjs';
import { withDatabase } from './migrate/database.mjs';

const usage = 'Usage: node scripts/migrate.mjs deploy | new <name> | check | resolve <name>';

/** @param {string[]} args @returns {Promise<number>} the exit code */
async function run([command, name]) {
  const root = path.dirname(import.meta.dirname);
  const folder = path.resolve(process.env.PAWL_PRISMA ?? path.join(root, 'prisma'));
  if (command === 'deploy') {
    const applied = await withDatabase(root, (address) => deploy(address, folder));
    console.log(applied.length === 0 ? 'The database is up to date.' : `Applied: ${applied.join(', ')}`);
    return 0;
  }
  if (command === 'check') {
    const sql = await withDatabase(root, (address) => outstanding(address, folder));
    if (sql === null) {
      console.log('The migrations say all that the schema says.');
      return 0;
    }
    console.error(`The schema asks for what no migration does. Run: npm run migrate -- new <name>\n\n${sql}`);
    return 2;
  }
  if (command === 'new' && name) {
    console.log(`Written: ${await withDatabase(root, (address) => writeNew(address, folder, name))}`);
    return 0;
  }
  if (command === 'resolve' && name) {
    await withDatabase(root, (address) => resolveFailed(address, folder, name));
    console.log(`${name} is marked as rolled back; the next deploy tries it again.`);
    return 0;
  }
  console.error(usage);
  return 64;
}

// process.exit, because the engine leaves a timer of ten seconds behind.
run(process.argv.slice(2)).then(
  (code) => process.exit(code),
  (error) => {
    console.error(error instanceof Error ? error.message : error);
    process.exit(1);
  },
);

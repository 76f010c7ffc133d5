// @ts-check
// node scripts/cli.mjs assess | compare | starter | schema | ledger | club …: the command line (lib/cli).
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { freshBundle } from './cli/bundle.mjs';

const root = path.dirname(import.meta.dirname);
const rooms = ['quantity', 'catalog', 'calc', 'design', 'assess', 'compare', 'cli'];

/** @param {string[]} args @returns {Promise<number>} the exit code */
async function run([command, ...args]) {
  if (command === 'ledger' || command === 'club') {
    const { runWithDatabase } = await import('./cli/database.mjs');
    return runWithDatabase(root, command, args);
  }
  const sources = [...rooms.map((room) => `lib/${room}`), 'scripts/cli', 'package-lock.json'];
  const bundle = await freshBundle(root, { entry: 'lib/cli/main.ts', sources, packagesInside: true });
  const { run: main } = await import(pathToFileURL(bundle).href);
  return main(command === undefined ? [] : [command, ...args]);
}

run(process.argv.slice(2)).then(
  (code) => {
    process.exitCode = code;
  },
  (error) => {
    const missing = error?.code === 'ERR_MODULE_NOT_FOUND';
    console.error(
      missing ? `A package is missing: run npm ci first.\n${error.message}` : (error?.stack ?? error),
    );
    process.exitCode = 1;
  },
);

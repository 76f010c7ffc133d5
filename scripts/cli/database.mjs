// @ts-check
// The commands that need a database: in a process of their own, so that its connections are gone before a server is stopped.
import { spawn } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { freshBundle } from './bundle.mjs';

/**
 * Works on DATABASE_URL, else on the embedded database of the data folder (started for the moment if it is down).
 * @param {string} root the project @param {string} command @param {string[]} args
 * @returns {Promise<number>} the exit code
 */
export async function runWithDatabase(root, command, args) {
  const folder = path.resolve(root, process.env.PAWL_DATA || '.pawl');
  if (!process.env.DATABASE_URL && !fs.existsSync(path.join(folder, 'postgres-password'))) {
    console.error('There is no database yet. Start Pawl once with npm start, or set DATABASE_URL.');
    return 2;
  }
  const sources = ['lib', 'generated/prisma', 'scripts/cli', 'package-lock.json'];
  const bundle = await freshBundle(root, {
    entry: 'lib/cli/database-main.ts',
    sources,
    packagesInside: false,
  });
  const { withDatabase } = await import('../migrate/database.mjs');
  return withDatabase(root, (url) => inChild(bundle, [command, ...args], url));
}

/** @param {string} bundle @param {string[]} args @param {string} url @returns {Promise<number>} */
function inChild(bundle, args, url) {
  const script = `const { run } = await import(process.argv[1]); process.exit(await run(process.argv.slice(2)));`;
  const child = spawn(process.execPath, ['--input-type=module', '-e', script, '--', bundle, ...args], {
    env: { ...process.env, DATABASE_URL: url },
    stdio: 'inherit',
  });
  return new Promise((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (code) => resolve(code ?? 1));
  });
}

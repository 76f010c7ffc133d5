// @ts-check
// The database of a run: the one of DATABASE_URL, else the embedded server; brought up to date either way.
import path from 'node:path';
import { ensureDatabase, startPostgres } from '../postgres/server.mjs';
import { databaseName } from './place.mjs';
import { run } from './run.mjs';

/** @typedef {{ url: string, server: import('../postgres/server.mjs').Server | null }} Database */

/** @param {string} root @param {string} dataFolder @returns {Promise<Database>} */
export async function openDatabase(root, dataFolder) {
  if (process.env.DATABASE_URL) return { url: process.env.DATABASE_URL, server: null };
  const server = await startPostgres({ root, dataFolder });
  try {
    await ensureDatabase(server, databaseName);
  } catch (error) {
    await server.stop();
    throw error;
  }
  return { url: server.url(databaseName), server };
}

/**
 * In a process of its own: the migration engine keeps a timer and its memory until the process ends.
 * @param {string} root @param {string} url
 */
export async function migrate(root, url) {
  const said = await run(process.execPath, [path.join(root, 'scripts/migrate.mjs'), 'deploy'], {
    cwd: root,
    env: { ...process.env, DATABASE_URL: url },
    failed: 'The database could not be brought up to date.',
  });
  return said.trim().split('\n').at(-1) ?? '';
}

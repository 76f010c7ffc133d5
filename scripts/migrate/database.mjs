// @ts-check
// Gives a command a database to work on: the one of DATABASE_URL, else the embedded one.
import { ensureDatabase, startPostgres } from '../postgres/server.mjs';
import { databaseName, makeDataFolder } from '../start/place.mjs';

/**
 * @template T
 * @param {string} root the project @param {(address: string) => Promise<T>} work
 * @returns {Promise<T>}
 */
export async function withDatabase(root, work) {
  if (process.env.DATABASE_URL) return work(process.env.DATABASE_URL);
  const server = await startPostgres({ root, dataFolder: makeDataFolder(root) });
  try {
    await ensureDatabase(server, databaseName);
    return await work(server.url(databaseName));
  } finally {
    // A server that was already running belongs to a running Pawl.
    if (!server.adopted) await server.stop();
  }
}

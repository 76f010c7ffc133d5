// @ts-check
// Where a running Pawl keeps what is its own, and at which address it answers.
import fs from 'node:fs';
import path from 'node:path';

/** The embedded server's database. */
export const databaseName = 'pawl';

/**
 * The data folder: PAWL_DATA, else .pawl in the project. Made if it is not there.
 * @param {string} root the project
 * @returns {string} an absolute path
 */
export function makeDataFolder(root) {
  const folder = path.resolve(root, process.env.PAWL_DATA || '.pawl');
  // Others may pass through (the database server runs as another account) but not look round.
  fs.mkdirSync(folder, { recursive: true, mode: 0o711 });
  return folder;
}

/**
 * @param {Record<string, string | undefined>} env PORT and HOST are read
 * @returns {{ host: string, port: number, url: string }} url: what a person on this machine types
 */
export function chooseAddress(env) {
  const host = env.HOST || '127.0.0.1';
  const port = Number(env.PORT || 3000);
  if (!Number.isInteger(port) || port < 1 || port > 65535) {
    throw new Error(`PORT must be a whole number from 1 to 65535, not "${env.PORT}".`);
  }
  const name =
    host === '0.0.0.0' ? '127.0.0.1' : host === '::' ? '[::1]' : host.includes(':') ? `[${host}]` : host;
  return { host, port, url: `http://${name}:${port}` };
}

// @ts-check
// A place for the bench alone: a temporary folder with a database of its own, and the built pages served from it.
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { ensureDatabase, startPostgres } from '../postgres/server.mjs';
import { buildPages } from '../start/build.mjs';
import { migrate } from '../start/database.mjs';
import { generateClient } from '../start/generate.mjs';
import { keepSecret } from '../start/secret.mjs';
import { checkPort, startWeb, untilHealthy } from '../start/web.mjs';

/**
 * @template T
 * @param {string} root the project
 * @param {number} port where the pages are served, on 127.0.0.1
 * @param {(service: { origin: string, dataFolder: string }) => Promise<T>} work DATABASE_URL and NEXTAUTH_SECRET are set by then
 * @returns {Promise<T>}
 */
export async function withService(root, port, work) {
  const address = { host: '127.0.0.1', port };
  await checkPort(address);
  await generateClient(root);
  await buildPages(root);
  const dataFolder = fs.mkdtempSync(path.join(os.tmpdir(), 'pawl-bench-'));
  // The database server may run as another account, which must pass through.
  fs.chmodSync(dataFolder, 0o711);
  /** @type {(() => Promise<void>)[]} */
  const undo = [async () => fs.rmSync(dataFolder, { recursive: true, force: true })];
  try {
    const server = await startPostgres({ root, dataFolder });
    undo.push(() => server.stop());
    await ensureDatabase(server, 'pawl');
    const env = {
      DATABASE_URL: server.url('pawl'),
      NEXTAUTH_SECRET: keepSecret(dataFolder, {}),
      AUTH_TRUST_HOST: 'true',
      PAWL_DATA: dataFolder,
    };
    await migrate(root, env.DATABASE_URL);
    Object.assign(process.env, env);
    const web = startWeb(root, address, env);
    undo.push(() => web.stop());
    const origin = `http://${address.host}:${port}`;
    await untilHealthy(origin, web);
    return await work({ origin, dataFolder });
  } finally {
    for (const action of undo.reverse()) await action();
  }
}

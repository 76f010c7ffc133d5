/** Starts one PostgreSQL for the integration tests, with a migrated template database to copy for each file. */
import { execFile } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { promisify } from 'node:util';
import type { TestProject } from 'vitest/node';
import { readPostmaster } from '../../scripts/postgres/postmaster.mjs';
import { endProcess, isAlive } from '../../scripts/postgres/process.mjs';
import { ensureDatabase, startPostgres } from '../../scripts/postgres/server.mjs';

declare module 'vitest' {
  interface ProvidedContext {
    /** Address of the template database; replace its last part for another one. */
    templateAddress: string;
  }
}

const root = path.resolve(import.meta.dirname, '../..');
const prefix = 'pawl-test-';

// What the tests write need not outlive a power cut.
const settings = ['fsync=off', 'synchronous_commit=off', 'full_page_writes=off', 'max_connections=200'];

export default async function setup(project: TestProject) {
  await sweep();
  const dataFolder = fs.mkdtempSync(path.join(os.tmpdir(), `${prefix}${process.pid}-`));
  fs.chmodSync(dataFolder, 0o711);
  const server = await startPostgres({ root, dataFolder, settings });
  const template = 'pawl_template';
  try {
    await ensureDatabase(server, template);
    // In a process of its own: the engine keeps a timer, and nobody may stay connected to a template.
    await promisify(execFile)(process.execPath, [path.join(root, 'scripts/migrate.mjs'), 'deploy'], {
      env: { ...process.env, DATABASE_URL: server.url(template) },
    });
  } catch (error) {
    await server.stop();
    throw error;
  }
  project.provide('templateAddress', server.url(template));
  return async () => {
    await server.stop();
    fs.rmSync(dataFolder, { recursive: true, force: true });
  };
}

/** Ends the servers, and removes the folders, of test runs that were killed. */
async function sweep() {
  for (const name of fs.readdirSync(os.tmpdir())) {
    const owner = name.startsWith(prefix) ? Number(name.slice(prefix.length).split('-')[0]) : Number.NaN;
    if (!Number.isInteger(owner) || isAlive(owner)) continue;
    const folder = path.join(os.tmpdir(), name);
    const left = readPostmaster(path.join(folder, 'postgres/cluster'));
    if (left) await endProcess(left.pid, { polite: 'SIGINT', firm: 'SIGQUIT' });
    fs.rmSync(folder, { recursive: true, force: true });
  }
}

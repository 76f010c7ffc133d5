// Pawl starts with one command, stops clean, and starts again after the kill -9 of any of its processes.
import fs from 'node:fs';
import path from 'node:path';
import { expect, test } from '@playwright/test';
import { isAlive } from '../../scripts/postgres/process.mjs';
import { ensureDatabase, startPostgres } from '../../scripts/postgres/server.mjs';
import { clearAway, databasePid, freshFolder, type Run, remembered, startService } from './service';

const port = 3918;
const url = `http://127.0.0.1:${port}`;
const readyLine = `Pawl is ready at ${url}\n`;
const patience = { timeout: 60_000 };

let folder = '';

async function ready(run: Run) {
  await expect.poll(() => run.said(), patience).toContain(readyLine);
}

const up = () => fetch(`${url}/api/health`).then((answer) => answer.status);

test.describe.configure({ mode: 'serial' });

test.beforeAll(() => {
  folder = freshFolder();
});

test.afterAll(async () => clearAway(folder));

test('says what it does, step by step with seconds, and its last line is the address', async () => {
  const run = startService(folder, port);
  await ready(run);
  for (const name of [
    'Packages',
    'Database client',
    'Database',
    'Migrations',
    'Demo club',
    'Pages',
    'Service',
  ]) {
    expect(run.said()).toMatch(new RegExp(`^ {2}${name} · \\d+\\.\\d s`, 'm'));
  }
  expect(run.said().endsWith(readyLine)).toBe(true);
  expect(await up()).toBe(200);
});

test('refuses a second start on the same data, naming the first, and leaves the first alone', async () => {
  const second = startService(folder, port);
  expect(await second.ended).toBe(1);
  expect(second.said()).toContain(`Pawl already runs on this data folder: ${url}`);
  expect(await up()).toBe(200);
});

test('starts again after a kill -9 of the starter: the same database server, the same secret', async () => {
  const secret = fs.readFileSync(path.join(folder, 'secret'), 'utf8');
  const before = { ...remembered(folder), database: databasePid(folder) };
  process.kill(before.starter, 'SIGKILL');
  await expect.poll(() => isAlive(before.starter)).toBe(false);
  const run = startService(folder, port);
  await ready(run);
  expect(isAlive(before.web)).toBe(false);
  expect(databasePid(folder)).toBe(before.database);
  expect(fs.readFileSync(path.join(folder, 'secret'), 'utf8')).toBe(secret);
  expect(run.said()).toMatch(/Demo club · \d+\.\d s · (already there|this version has none)/);
});

test('ends in a sentence when the database server is killed, and starts again', async () => {
  const before = remembered(folder);
  process.kill(databasePid(folder), 'SIGKILL');
  await expect.poll(() => isAlive(before.starter), patience).toBe(false);
  expect(isAlive(before.web)).toBe(false);
  await ready(startService(folder, port));
  expect(await up()).toBe(200);
});

test('ends everything when the web process is killed, and starts again', async () => {
  const before = { ...remembered(folder), database: databasePid(folder) };
  process.kill(before.web, 'SIGKILL');
  await expect.poll(() => isAlive(before.starter), patience).toBe(false);
  expect(isAlive(before.database)).toBe(false);
  await ready(startService(folder, port));
});

for (const signal of ['SIGTERM', 'SIGINT'] as const) {
  test(`stops clean on ${signal}: no process, no note, no open port`, async () => {
    if (!fs.existsSync(path.join(folder, 'run.json'))) await ready(startService(folder, port));
    const before = { ...remembered(folder), database: databasePid(folder) };
    process.kill(before.starter, signal);
    await expect.poll(() => isAlive(before.starter), patience).toBe(false);
    expect([before.web, before.database].filter(isAlive)).toEqual([]);
    expect(fs.existsSync(path.join(folder, 'run.json'))).toBe(false);
    await expect(up()).rejects.toThrow();
  });
}

test('uses the database it is given: starts none of its own and loads no demo', async () => {
  const [own, other] = [freshFolder(), freshFolder()];
  const server = await startPostgres({ root: process.cwd(), dataFolder: other });
  try {
    await ensureDatabase(server, 'given');
    const run = startService(own, port, { DATABASE_URL: server.url('given') });
    await ready(run);
    expect(await up()).toBe(200);
    expect(run.said()).not.toContain('Demo club');
    expect(fs.readdirSync(own).sort()).toEqual(['run.json', 'secret']);
    run.starter.kill('SIGTERM');
    expect(await run.ended).toBe(0);
    expect(isAlive(server.pid)).toBe(true);
  } finally {
    await server.stop();
    await clearAway(own);
    await clearAway(other);
  }
});

test('says so when its port is taken', async () => {
  const own = freshFolder();
  const taken = Number(new URL(test.info().project.use.baseURL ?? '').port);
  const run = startService(own, taken);
  expect(await run.ended).toBe(1);
  expect(run.said()).toContain(`Port ${taken} on 127.0.0.1 is used by another program`);
  await clearAway(own);
});

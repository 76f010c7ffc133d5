// The embedded server outlives what can happen to it: a killed starter, a kill of its own, a stale note.
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { isAlive, startedAt } from '../../../scripts/postgres/process.mjs';
import { ensureDatabase, type Server, startPostgres } from '../../../scripts/postgres/server.mjs';

const root = path.resolve('.');
const dataFolder = fs.mkdtempSync(path.join(os.tmpdir(), 'pawl-postgres-'));
const noteFile = path.join(dataFolder, 'postgres/cluster/postmaster.pid');
fs.chmodSync(dataFolder, 0o711);

let server: Server;

async function ask(sql: string): Promise<unknown[]> {
  const client = new pg.Client({ connectionString: server.url('kept') });
  await client.connect();
  try {
    return (await client.query(sql)).rows;
  } finally {
    await client.end();
  }
}

beforeAll(async () => {
  server = await startPostgres({ root, dataFolder });
  await ensureDatabase(server, 'kept');
  await ask('CREATE TABLE fact AS SELECT 7 AS n');
});

afterAll(async () => {
  await server.stop();
  fs.rmSync(dataFolder, { recursive: true, force: true });
});

describe('the embedded server', () => {
  it('sorts and folds text the same on every machine: UTF-8, by code point', async () => {
    expect(
      await ask(`SELECT datlocprovider AS by, datlocale AS locale FROM pg_database WHERE datname = 'kept'`),
    ).toEqual([{ by: 'b', locale: 'C.UTF-8' }]);
    expect(await ask(`SELECT upper('ä') AS u, 'Z' < 'a' AS z`)).toEqual([{ u: 'Ä', z: true }]);
  });

  it('listens on this machine alone and wants the password, which only its owner can read', async () => {
    expect(await ask(`SELECT current_setting('listen_addresses') AS a`)).toEqual([{ a: '127.0.0.1' }]);
    const bare = new URL(server.url('kept'));
    bare.password = 'wrong';
    const client = new pg.Client({ connectionString: bare.href });
    await expect(client.connect()).rejects.toMatchObject({ code: '28P01' });
    expect(fs.statSync(path.join(dataFolder, 'postgres-password')).mode & 0o777).toBe(0o600);
  });

  it('is adopted, not doubled, by a second start while it runs', async () => {
    const again = await startPostgres({ root, dataFolder });
    expect(again).toMatchObject({ pid: server.pid, port: server.port, adopted: true });
  });

  it('outlives the kill -9 of the process that started it', async () => {
    await server.stop();
    const code = `import('${root}/scripts/postgres/server.mjs').then(async ({ startPostgres }) => {
      const { pid } = await startPostgres({ root: '${root}', dataFolder: '${dataFolder}' });
      console.log(pid);
      process.kill(process.pid, 'SIGKILL');
    });`;
    const ran = spawnSync(process.execPath, ['-e', code], { encoding: 'utf8' });
    expect(ran.signal).toBe('SIGKILL');
    expect(isAlive(Number(ran.stdout))).toBe(true);
    server = await startPostgres({ root, dataFolder });
    expect(server).toMatchObject({ pid: Number(ran.stdout), adopted: true });
    expect(await ask('SELECT n FROM fact')).toEqual([{ n: 7 }]);
  });

  it('recovers what was committed before a kill -9 of its own', async () => {
    await ask('INSERT INTO fact VALUES (8)');
    const before = server.pid;
    process.kill(before, 'SIGKILL');
    server = await startPostgres({ root, dataFolder });
    expect(server.adopted).toBe(false);
    expect(server.pid).not.toBe(before);
    expect(await ask('SELECT n FROM fact ORDER BY n')).toEqual([{ n: 7 }, { n: 8 }]);
  });

  it('is not mistaken for a stranger who was given the number in its note', async () => {
    await server.stop();
    fs.writeFileSync(
      noteFile,
      `${process.pid}\n${path.dirname(noteFile)}\n0\n5432\n\n127.0.0.1\n\nready   \n`,
    );
    server = await startPostgres({ root, dataFolder });
    expect(server.adopted).toBe(false);
    expect(await ask('SELECT count(*)::int AS n FROM fact')).toEqual([{ n: 2 }]);
  });

  it('stops within a few seconds though a session is open, and leaves no note behind', async () => {
    const idle = new pg.Client({ connectionString: server.url('kept') });
    idle.on('error', () => {}); // its end is the point
    await idle.connect();
    await server.stop();
    expect(startedAt(server.pid)).toBeNull();
    expect(fs.existsSync(noteFile)).toBe(false);
    server = await startPostgres({ root, dataFolder });
  });

  it('says what is missing when its password is lost', async () => {
    const file = path.join(dataFolder, 'postgres-password');
    fs.renameSync(file, `${file}.away`);
    await expect(startPostgres({ root, dataFolder })).rejects.toThrow(/its password is not/);
    fs.renameSync(`${file}.away`, file);
  });
});

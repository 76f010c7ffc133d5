// The migration engine through our mended adapter: each of the five repairs has its test, and the command its exit codes.
import { spawnSync } from 'node:child_process';
import crypto from 'node:crypto';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import pg from 'pg';
import { afterAll, beforeEach, describe, expect, inject, it } from 'vitest';

const script = path.resolve('scripts/migrate.mjs');
const base = fs.mkdtempSync(path.join(os.tmpdir(), 'pawl-migrate-'));

const schema = `
generator client {
  provider = "prisma-client"
  output   = "../generated/prisma"
}

datasource db {
  provider = "postgresql"
}

model Entry {
  id   Int    @id @default(autoincrement())
  text String
}
`;

const firstTables = `CREATE TABLE "Entry" ("id" SERIAL PRIMARY KEY, "text" TEXT NOT NULL);
CREATE FUNCTION refuse() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'an entry; once written; stays' USING ERRCODE = '55000';
  RETURN NULL;
END;
$$;
CREATE TRIGGER entry_stays BEFORE UPDATE OR DELETE ON "Entry" FOR EACH ROW EXECUTE FUNCTION refuse();
`;

let folder = '';
let address = '';

function addressOf(database: string): string {
  const url = new URL(inject('templateAddress'));
  url.pathname = `/${database}`;
  return url.href;
}

async function ask<Row extends pg.QueryResultRow>(sql: string, on = address): Promise<Row[]> {
  const client = new pg.Client({ connectionString: on });
  await client.connect();
  try {
    return (await client.query<Row>(sql)).rows;
  } finally {
    await client.end();
  }
}

function write(name: string, sql: string) {
  const target = path.join(folder, 'migrations', name);
  fs.mkdirSync(target, { recursive: true });
  fs.writeFileSync(path.join(target, 'migration.sql'), sql);
}

function migrate(...args: string[]) {
  const env = { ...process.env, DATABASE_URL: address, PAWL_PRISMA: folder };
  const began = Date.now();
  const ran = spawnSync(process.execPath, [script, ...args], { env, encoding: 'utf8' });
  return { code: ran.status, said: ran.stdout + ran.stderr, seconds: (Date.now() - began) / 1000 };
}

beforeEach(async () => {
  const name = `pawl_migrate_${crypto.randomBytes(6).toString('hex')}`;
  await ask(`CREATE DATABASE ${name}`, addressOf('postgres'));
  address = addressOf(name);
  folder = path.join(base, name);
  fs.mkdirSync(folder);
  fs.writeFileSync(path.join(folder, 'schema.prisma'), schema);
});

afterAll(() => fs.rmSync(base, { recursive: true, force: true }));

describe('migrate deploy', () => {
  it('applies a migration whose function body holds semicolons, and notes it as finished', async () => {
    write('20260101000000_first_tables', firstTables);
    expect(migrate('deploy')).toMatchObject({ code: 0, said: expect.stringContaining('first_tables') });
    await ask(`INSERT INTO "Entry" ("text") VALUES ('a')`);
    await expect(ask(`DELETE FROM "Entry"`)).rejects.toMatchObject({ code: '55000' });
    const [row] = await ask<{ checksum: string; finished_at: Date | null; applied_steps_count: number }>(
      'SELECT checksum, finished_at, applied_steps_count FROM _prisma_migrations',
    );
    expect(row?.checksum).toBe(crypto.createHash('sha256').update(firstTables).digest('hex'));
    expect(row?.finished_at).toBeInstanceOf(Date);
    expect(row?.applied_steps_count).toBe(1);
  });

  it('does nothing the second time', () => {
    write('20260101000000_first_tables', firstTables);
    migrate('deploy');
    expect(migrate('deploy')).toMatchObject({ code: 0, said: expect.stringContaining('up to date') });
  });

  it('ends well before the ten seconds of the timer that the engine leaves behind', () => {
    write('20260101000000_first_tables', firstTables);
    expect(migrate('deploy').seconds).toBeLessThan(8);
  });

  it('leaves nothing half done by a migration that fails, refuses to go on, and tries again once resolved', async () => {
    write('20260101000000_first_tables', `${firstTables}SELECT 1/0;\n`);
    expect(migrate('deploy').code).toBe(1);
    expect(await ask(`SELECT to_regclass('"Entry"') AS t`)).toEqual([{ t: null }]);
    expect(migrate('deploy')).toMatchObject({ code: 1, said: expect.stringContaining('failed earlier') });
    write('20260101000000_first_tables', firstTables);
    expect(migrate('resolve', '20260101000000_first_tables').code).toBe(0);
    expect(migrate('deploy').code).toBe(0);
    expect(await ask('SELECT 1 AS one FROM "Entry"')).toEqual([]);
  });

  it('refuses a migration that was edited after it had been applied', () => {
    write('20260101000000_first_tables', firstTables);
    migrate('deploy');
    write('20260101000000_first_tables', `${firstTables}-- a second thought\n`);
    expect(migrate('deploy')).toMatchObject({ code: 1, said: expect.stringContaining('was edited') });
  });
});

describe('migrate check and new', () => {
  it('says 2 and shows the SQL while the schema asks for what no migration does, and 0 once it is written', () => {
    expect(migrate('check')).toMatchObject({
      code: 2,
      said: expect.stringContaining('CREATE TABLE "Entry"'),
    });
    expect(migrate('new', 'first_tables').code).toBe(0);
    expect(migrate('check').code).toBe(0);
    fs.writeFileSync(
      path.join(folder, 'schema.prisma'),
      schema.replace('text String', 'text String\n  by String?'),
    );
    expect(migrate('check')).toMatchObject({ code: 2, said: expect.stringContaining('ADD COLUMN') });
  });

  it('never proposes to remove a trigger or function written by hand', () => {
    write('20260101000000_first_tables', firstTables);
    expect(migrate('check').code).toBe(0);
  });

  it('replays the migrations in a database of its own: the main one stays empty, the other is dropped', async () => {
    write('20260101000000_first_tables', firstTables);
    expect(migrate('check').code).toBe(0);
    expect(await ask(`SELECT to_regclass('"Entry"') AS t`)).toEqual([{ t: null }]);
    expect(await ask(`SELECT datname FROM pg_database WHERE datname LIKE 'pawl_shadow_%'`)).toEqual([]);
  });

  it('refuses a name that would not do for a folder', () => {
    expect(migrate('new', 'Bad Name').code).toBe(1);
  });
});

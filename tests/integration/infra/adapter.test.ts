// The mended adapter beside the one it mends: when a test on the plain one turns red, that repair can go.
import { PrismaPg } from '@prisma/adapter-pg';
import { ColumnTypeEnum } from '@prisma/driver-adapter-utils';
import { afterEach, describe, expect, it } from 'vitest';
import { MigrationAdapter } from '../../../scripts/migrate/adapter.mjs';

const address = process.env.DATABASE_URL ?? '';
const charQuery = { sql: `SELECT relkind FROM pg_class WHERE relname = 'pg_class'`, args: [], argTypes: [] };
const whichDatabase = { sql: 'SELECT current_database()::text', args: [], argTypes: [] };
const functionScript = `CREATE OR REPLACE FUNCTION one() RETURNS int LANGUAGE plpgsql AS $$ BEGIN RETURN 1; END; $$;
  CREATE OR REPLACE FUNCTION two() RETURNS int LANGUAGE sql AS 'SELECT 2; SELECT 2';`;

const open: { close(): Promise<void> }[] = [];

function mended(): MigrationAdapter {
  const adapter = new MigrationAdapter(address);
  open.push(adapter);
  return adapter;
}

async function plain() {
  const connection = await new PrismaPg({ connectionString: address }).connect();
  open.push({ close: () => connection.dispose() });
  return connection;
}

afterEach(async () => {
  await Promise.all(open.splice(0).map((one) => one.close()));
});

describe('the plain adapter still', () => {
  it('cuts a script at every semicolon', async () => {
    await expect((await plain()).executeScript(functionScript)).rejects.toThrow();
  });

  it('refuses columns of type "char"', async () => {
    await expect((await plain()).queryRaw(charQuery)).rejects.toThrow();
  });

  it('opens the main database as the shadow', async () => {
    const shadow = await new PrismaPg({ connectionString: address }).connectToShadowDb();
    const { rows } = await shadow.queryRaw(whichDatabase);
    await shadow.dispose();
    expect(rows[0]?.[0]).toBe(new URL(address).pathname.slice(1));
  });
});

describe('the mended adapter', () => {
  it('sends a script whole', async () => {
    const connection = await mended().connect();
    await connection.executeScript(functionScript);
    const { rows } = await connection.queryRaw({ sql: 'SELECT one() + two()', args: [], argTypes: [] });
    expect(rows).toEqual([[3]]);
  });

  it('passes a fault of a script on as a fault of the database, with its code', async () => {
    const connection = await mended().connect();
    await expect(connection.executeScript('SELECT 1; SELECT 1/0;')).rejects.toMatchObject({
      name: 'DriverAdapterError',
      cause: { originalCode: '22012' },
    });
  });

  it('reads "char" as a character, outside and inside a transaction', async () => {
    const connection = await mended().connect();
    const expected = { columnTypes: [ColumnTypeEnum.Character], rows: [['r']] };
    expect(await connection.queryRaw(charQuery)).toMatchObject(expected);
    const transaction = await connection.startTransaction();
    expect(await transaction.queryRaw(charQuery)).toMatchObject(expected);
    await transaction.rollback();
  });

  it('opens an empty shadow database that is not the main one, and drops it with itself', async () => {
    const adapter = mended();
    const shadow = await adapter.connectToShadowDb();
    const { rows } = await shadow.queryRaw(whichDatabase);
    const name = String(rows[0]?.[0]);
    expect(name).toMatch(/^pawl_shadow_[0-9a-f]{16}$/);
    await adapter.close();
    const main = await mended().connect();
    const sql = `SELECT count(*)::int FROM pg_database WHERE datname = '${name}'`;
    expect((await main.queryRaw({ sql, args: [], argTypes: [] })).rows).toEqual([[0]]);
  });
});

/** Gives each test file a database of its own, copied from the template, before the store is first imported. */
import crypto from 'node:crypto';
import pg from 'pg';
import { inject } from 'vitest';

const template = new URL(inject('templateAddress'));
const name = `pawl_${crypto.randomBytes(8).toString('hex')}`;

const admin = new URL(template);
admin.pathname = '/postgres';
const client = new pg.Client({ connectionString: admin.href });
await client.connect();
try {
  const source = pg.escapeIdentifier(template.pathname.slice(1));
  await client.query(`CREATE DATABASE ${pg.escapeIdentifier(name)} TEMPLATE ${source}`);
} finally {
  await client.end();
}

const own = new URL(template);
own.pathname = `/${name}`;
process.env.DATABASE_URL = own.href;

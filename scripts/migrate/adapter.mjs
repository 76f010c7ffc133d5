// @ts-check
// Prisma's adapter for pg, mended in five places so that the schema engine can work through it.
import crypto from 'node:crypto';
import { PrismaPg } from '@prisma/adapter-pg';
import { ColumnTypeEnum } from '@prisma/driver-adapter-utils';
import pg from 'pg';

/** PostgreSQL's one-byte "char", used all over its catalogue, and plain text: numbers of its type table. */
const charOid = 18;
const textOid = 25;

/**
 * The adapter's own classes are not exported, and three of the members mended here are private to it.
 * @typedef {any} Connection
 */

/**
 * A factory of mended connections to the database of one address.
 *
 * 1. A script goes to the server whole. The adapter cuts it at every semicolon, through the middle of any
 *    trigger or function body.
 * 2. The shadow database is one of its own. The adapter's opens the address it was given, which is the main
 *    database, and replays the migrations there.
 * 3. Columns of type "char" are read as text. The adapter refuses them, and with them every look at a schema.
 * 4. Every pool is remembered and can be closed.
 * 5. The engine's ten-second timer is met by the callers: a command ends with process.exit().
 */
export class MigrationAdapter extends PrismaPg {
  /** @type {Set<Connection>} */
  #open = new Set();
  #address;

  /** @param {string} address a postgresql:// URL */
  constructor(address) {
    super({ connectionString: address });
    this.#address = address;
  }

  /** @returns {Promise<Connection>} */
  async connect() {
    return this.#keep(mend(await super.connect()));
  }

  /** @returns {Promise<Connection>} to a new, empty database that is dropped when let go of */
  async connectToShadowDb() {
    const name = `pawl_shadow_${crypto.randomBytes(8).toString('hex')}`;
    await once(this.#address, `CREATE DATABASE ${pg.escapeIdentifier(name)}`);
    const shadow = new URL(this.#address);
    shadow.pathname = `/${name}`;
    const connection = mend(await new PrismaPg({ connectionString: shadow.href }).connect());
    const release = connection.dispose.bind(connection);
    connection.dispose = async () => {
      await release();
      await once(this.#address, `DROP DATABASE IF EXISTS ${pg.escapeIdentifier(name)} WITH (FORCE)`);
    };
    return this.#keep(connection);
  }

  /** Closes every connection still open, and drops the shadow databases with them. */
  async close() {
    await Promise.all([...this.#open].map((connection) => connection.dispose()));
  }

  /** @param {Connection} connection */
  #keep(connection) {
    const release = connection.dispose.bind(connection);
    this.#open.add(connection);
    connection.dispose = async () => {
      if (this.#open.delete(connection)) await release();
    };
    return connection;
  }
}

/** @param {Connection} connection @returns {Connection} */
function mend(connection) {
  readCharAsText(connection);
  /** @param {string} script */
  connection.executeScript = async (script) => {
    try {
      await connection.client.query(script);
    } catch (error) {
      connection.onError(error);
    }
  };
  const begin = connection.startTransaction.bind(connection);
  connection.startTransaction = async (/** @type {unknown[]} */ ...args) =>
    readCharAsText(await begin(...args));
  return connection;
}

/** @param {Connection} queryable @returns {Connection} */
function readCharAsText(queryable) {
  /** Which columns of the last answer were "char": the engine wants to be told so. @type {number[]} */
  let chars = [];
  const perform = queryable.performIO.bind(queryable);
  queryable.performIO = async (/** @type {unknown} */ query) => {
    const result = await perform(query);
    chars = [];
    for (const [index, field] of result.fields.entries()) {
      if (field.dataTypeID !== charOid) continue;
      field.dataTypeID = textOid;
      chars.push(index);
    }
    return result;
  };
  const queryRaw = queryable.queryRaw.bind(queryable);
  queryable.queryRaw = async (/** @type {unknown} */ query) => {
    const answer = await queryRaw(query);
    for (const index of chars) answer.columnTypes[index] = ColumnTypeEnum.Character;
    return answer;
  };
  return queryable;
}

/** @param {string} address @param {string} sql */
async function once(address, sql) {
  const client = new pg.Client({ connectionString: address });
  await client.connect();
  try {
    await client.query(sql);
  } finally {
    await client.end();
  }
}

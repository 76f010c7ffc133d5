// A plain connection to the database of a test, as someone with all rights in it would have.
import pg from 'pg';

export async function connect(): Promise<pg.Client> {
  const client = new pg.Client({ connectionString: process.env.DATABASE_URL });
  await client.connect();
  return client;
}

/** Runs the work on a connection of its own. */
export async function withSql<T>(work: (sql: pg.Client) => Promise<T>): Promise<T> {
  const sql = await connect();
  try {
    return await work(sql);
  } finally {
    await sql.end();
  }
}

/** The one number a counting query gives. */
export async function count(sql: pg.Client, query: string): Promise<number> {
  const { rows } = await sql.query(`SELECT (${query})::int AS n`);
  return rows[0].n;
}

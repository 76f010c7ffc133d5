// @ts-check
// Reads prisma/: the schema, and the migrations in the form in which the schema engine wants them.
import fs from 'node:fs';
import path from 'node:path';

/** @typedef {{ path: string, content: string }} SchemaFile */

/** What the engine reads the kind of database from; a folder without any migration has no such file yet. */
const lockText = 'provider = "postgresql"\n';

/** @param {string} folder prisma/ @returns {SchemaFile} */
export function readSchema(folder) {
  const file = path.join(folder, 'schema.prisma');
  if (!fs.existsSync(file)) throw new Error(`There is no ${file}.`);
  return { path: 'schema.prisma', content: fs.readFileSync(file, 'utf8') };
}

/** @param {string} folder prisma/ @returns {string[]} the names of its migrations, oldest first */
function migrationNames(folder) {
  const migrations = path.join(folder, 'migrations');
  if (!fs.existsSync(migrations)) return [];
  const entries = fs.readdirSync(migrations, { withFileTypes: true });
  return entries
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort();
}

/** @param {string} folder prisma/ */
export function readMigrations(folder) {
  const baseDir = path.join(folder, 'migrations');
  const lock = path.join(baseDir, 'migration_lock.toml');
  return {
    baseDir,
    lockfile: {
      path: 'migration_lock.toml',
      content: fs.existsSync(lock) ? fs.readFileSync(lock, 'utf8') : lockText,
    },
    shadowDbInitScript: '',
    migrationDirectories: migrationNames(folder).map((name) => ({
      path: name,
      migrationFile: { path: 'migration.sql', content: readSql(path.join(baseDir, name, 'migration.sql')) },
    })),
  };
}

/** @param {string} file @returns {{ tag: 'ok' | 'error', value: string }} */
function readSql(file) {
  try {
    return { tag: 'ok', value: fs.readFileSync(file, 'utf8') };
  } catch (error) {
    return { tag: 'error', value: error instanceof Error ? error.message : String(error) };
  }
}

/**
 * Writes a new migration, named by the moment (UTC) and the given name.
 * @param {string} folder prisma/ @param {string} name lower-case words joined by _ @param {string} sql
 * @param {Date} [now]
 * @returns {string} the file written
 */
export function writeMigration(folder, name, sql, now = new Date()) {
  const moment = now.toISOString().replace(/\D/g, '').slice(0, 14);
  const target = path.join(folder, 'migrations', `${moment}_${name}`);
  fs.mkdirSync(target, { recursive: true });
  const lock = path.join(folder, 'migrations', 'migration_lock.toml');
  if (!fs.existsSync(lock)) fs.writeFileSync(lock, lockText);
  const file = path.join(target, 'migration.sql');
  fs.writeFileSync(file, sql);
  return file;
}

// @ts-check
// What can be asked of the migrations: bring a database up to date, write a new one, check that none is missing.
import { withEngine } from './engine.mjs';
import { readMigrations, readSchema, writeMigration } from './folder.mjs';

const filters = { externalTables: [], externalEnums: [] };

/** @typedef {import('@prisma/schema-engine-wasm/schema_engine_bg').SchemaEngine} Engine */

/**
 * Applies what is outstanding. Stops before that at a migration that failed, or was edited after it was applied.
 * @param {string} address a postgresql:// URL @param {string} folder prisma/
 * @returns {Promise<string[]>} the names of the migrations applied now
 */
export function deploy(address, folder) {
  const migrationsList = readMigrations(folder);
  return withEngine(address, readSchema(folder), async (engine) => {
    const state = await engine.diagnoseMigrationHistory({
      migrationsList,
      optInToShadowDatabase: false,
      filters,
    });
    if (state.failedMigrationNames.length > 0) {
      throw new Error(
        `A migration failed earlier and left the database half way: ${state.failedMigrationNames.join(', ')}. ` +
          'Mend the database by hand, then run: npm run migrate -- resolve <name>',
      );
    }
    if (state.editedMigrationNames.length > 0) {
      throw new Error(
        `A migration was edited after it had been applied: ${state.editedMigrationNames.join(', ')}. ` +
          'Put its text back and write the change as a new migration.',
      );
    }
    const done = await engine.applyMigrations({ migrationsList, filters });
    return done.appliedMigrationNames;
  });
}

/**
 * Marks a failed migration as rolled back, so that the next deploy tries it again.
 * @param {string} address @param {string} folder prisma/ @param {string} migrationName
 */
export function resolveFailed(address, folder, migrationName) {
  return withEngine(address, readSchema(folder), (engine) =>
    engine.markMigrationRolledBack({ migrationName }),
  );
}

/**
 * The SQL that still leads from the migrations to the schema. Triggers, functions and CHECKs are invisible to it.
 * @param {string} address any database of the server; a shadow database is created beside it
 * @param {string} folder prisma/
 * @returns {Promise<string | null>} null when the migrations say all that the schema says
 */
export function outstanding(address, folder) {
  const migrations = readMigrations(folder);
  const schema = readSchema(folder);
  return withEngine(address, schema, async (engine) => {
    const result = await engine.diff({
      from: { tag: 'migrations', ...migrations },
      to: { tag: 'schemaDatamodel', files: [schema] },
      script: true,
      exitCode: true,
      filters,
    });
    return result.exitCode === 2 ? (result.stdout ?? '') : null;
  });
}

/**
 * Writes a migration with what is outstanding, or an empty one for SQL by hand.
 * @param {string} address @param {string} folder prisma/ @param {string} name
 * @returns {Promise<string>} the file
 */
export async function writeNew(address, folder, name) {
  if (!/^[a-z][a-z0-9_]{2,60}$/.test(name)) {
    throw new Error('A migration is named by lower-case words joined by _, for example: add_test_records');
  }
  const sql = await outstanding(address, folder);
  return writeMigration(folder, name, sql ?? '-- The schema asks for nothing new: write the SQL by hand.\n');
}

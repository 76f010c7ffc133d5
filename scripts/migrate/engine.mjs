// @ts-check
// Prisma's schema engine as WebAssembly: no native engine is downloaded, now or ever.
import fs from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { bindMigrationAwareSqlAdapterFactory } from '@prisma/driver-adapter-utils';
import * as glue from '@prisma/schema-engine-wasm/schema_engine_bg';
import { MigrationAdapter } from './adapter.mjs';

let loaded = false;

async function load() {
  if (loaded) return;
  const require = createRequire(import.meta.url);
  const folder = path.dirname(require.resolve('@prisma/schema-engine-wasm/schema_engine_bg'));
  const bytes = fs.readFileSync(path.join(folder, 'schema_engine_bg.wasm'));
  /** @type {any} The glue's functions are the module's imports; the compiler knows neither side. */
  const imports = { './schema_engine_bg.js': glue };
  const { instance } = await WebAssembly.instantiate(bytes, imports);
  /** @type {any} */
  const wasm = instance.exports;
  glue.__wbg_set_wasm(wasm);
  wasm.__wbindgen_start?.();
  loaded = true;
}

/**
 * Runs `work` with an engine on the database and closes what it opened. The engine leaves a timer of ten
 * seconds behind: whoever must end sooner ends with process.exit().
 * @template T
 * @param {string} address a postgresql:// URL
 * @param {import('./folder.mjs').SchemaFile} schema
 * @param {(engine: glue.SchemaEngine) => Promise<T>} work
 * @returns {Promise<T>}
 */
export async function withEngine(address, schema, work) {
  await load();
  const adapter = new MigrationAdapter(address);
  try {
    const engine = await glue.SchemaEngine.new(
      { datamodels: [[schema.path, schema.content]] },
      () => {},
      bindMigrationAwareSqlAdapterFactory(adapter),
    );
    return await work(engine);
  } finally {
    await adapter.close();
  }
}

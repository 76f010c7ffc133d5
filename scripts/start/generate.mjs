// @ts-check
// Generates the database client from the schema, when the schema changed.
import path from 'node:path';
import { run } from './run.mjs';
import { hashOf, unlessStamped } from './stamp.mjs';

/** @param {string} root the project */
export function generateClient(root) {
  const sources = ['prisma/schema.prisma', 'prisma.config.ts', 'package-lock.json'];
  return unlessStamped(path.join(root, 'generated/.pawl-schema'), hashOf(root, sources), async () => {
    await run(process.execPath, [path.join(root, 'node_modules/prisma/build/index.js'), 'generate'], {
      cwd: root,
      // Any program will do: `generate` only looks whether there is a native engine, and would download one.
      env: { ...process.env, PRISMA_SCHEMA_ENGINE_BINARY: process.execPath, PRISMA_HIDE_UPDATE_MESSAGE: '1' },
      failed: 'The database client could not be generated from prisma/schema.prisma.',
    });
  });
}

/** Two test projects: `unit` needs nothing but Node, `integration` gets a fresh Postgres database a file. */
import path from 'node:path';
import { defineConfig } from 'vitest/config';

const root = import.meta.dirname;

export default defineConfig({
  resolve: {
    // The guard against use in a browser throws outside a page server; a test is no browser.
    alias: { '@': root, 'server-only': path.join(root, 'node_modules/server-only/empty.js') },
  },
  test: {
    exclude: ['**/node_modules/**'],
    // Two cores are the machine we design for; the setting sits at the root because projects must agree on it.
    maxWorkers: 2,
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
          exclude: ['**/node_modules/**', 'tests/integration/**'],
          setupFiles: [path.join(root, 'tests/setup/console.ts')],
          // Only a test that hangs fails by the clock: a busy machine is no fault of the code.
          testTimeout: 120_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'integration',
          include: ['tests/integration/**/*.test.ts'],
          globalSetup: [
            path.join(root, 'tests/setup/database-server.ts'),
            path.join(root, 'tests/setup/threads.ts'),
          ],
          setupFiles: [
            path.join(root, 'tests/setup/console.ts'),
            path.join(root, 'tests/setup/database-of-file.ts'),
          ],
          testTimeout: 30_000,
          hookTimeout: 60_000,
        },
      },
    ],
  },
});

/** Two test projects: `unit` needs nothing but Node, `integration` gets a fresh Postgres database a file. */
import path from 'node:path';
import { defineConfig } from 'vitest/config';

const root = import.meta.dirname;

export default defineConfig({
  resolve: { alias: { '@': root } },
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
        },
      },
    ],
  },
});

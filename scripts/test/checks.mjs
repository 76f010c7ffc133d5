// @ts-check
// What `npm test` does, in order: what is fast and what others rest on comes first.
import path from 'node:path';

/**
 * @typedef {object} Check
 * @property {string} name as given to --only
 * @property {string} says what it proves
 * @property {string[]} command a program of node_modules (path) and its arguments, run by this Node
 * @property {'vitest' | 'playwright' | null} counts whose report tells how many tests there were; null: one check
 * @property {string} advice what to do when it fails
 */

/**
 * @param {string} reports folder for the reports of the test runners
 * @returns {Check[]}
 */
export function checksWith(reports) {
  /** @param {string} project */
  const vitest = (project) => [
    ...['node_modules/vitest/vitest.mjs', 'run', '--project', project],
    ...[
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${path.join(reports, `${project}.json`)}`,
    ],
  ];
  return [
    {
      name: 'lint',
      says: 'form and common mistakes',
      command: ['node_modules/@biomejs/biome/bin/biome', 'check', '.'],
      counts: null,
      advice: 'Form is mended by: npx biome check --write .',
    },
    {
      name: 'types',
      says: 'types',
      command: ['node_modules/typescript/bin/tsc', '--noEmit', '-p', '.'],
      counts: null,
      advice: 'Mend the types, then: npm run types',
    },
    {
      name: 'walls',
      says: 'every import goes along an arrow',
      command: ['scripts/walls.mjs'],
      counts: null,
      advice:
        'Move the code to the room that may know it, or write the arrow with its reason in tools/rooms.cjs',
    },
    {
      name: 'unused',
      says: 'no file, export or package that nobody uses',
      command: ['node_modules/knip/bin/knip.js', '--no-progress'],
      counts: null,
      advice: 'Remove what nobody uses, then: npm run unused',
    },
    {
      name: 'unit',
      says: 'tests that need Node alone',
      command: vitest('unit'),
      counts: 'vitest',
      advice: 'Run one file alone: npx vitest run <its path>',
    },
    {
      name: 'integration',
      says: 'tests on a real PostgreSQL',
      command: vitest('integration'),
      counts: 'vitest',
      advice: 'Run one file alone: npx vitest run --project integration <its path>',
    },
    {
      name: 'build',
      says: 'the pages build',
      command: ['scripts/build.mjs'],
      counts: null,
      advice: 'Mend what the build names, then: node scripts/build.mjs',
    },
    {
      name: 'e2e',
      says: "a person's story in a real browser",
      command: ['node_modules/@playwright/test/cli.js', 'test'],
      counts: 'playwright',
      advice: 'Pictures and traces lie in test-results/; run one alone: npx playwright test <its path>',
    },
  ];
}

/** What a check needs before it can run. */
export const needs = {
  client: ['types', 'unused', 'unit', 'integration', 'build', 'e2e'],
  pageTypes: ['types'],
  tools: ['walls', 'unit'],
  browser: ['e2e'],
};

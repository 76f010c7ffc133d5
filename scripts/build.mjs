// @ts-check
// node scripts/build.mjs: builds the pages, unless their sources are those of the last good build.
import path from 'node:path';
import { buildPages } from './start/build.mjs';
import { generateClient } from './start/generate.mjs';

const root = path.dirname(import.meta.dirname);

try {
  await generateClient(root);
  const note = await buildPages(root);
  console.log(note === '' ? 'The pages are built.' : `The pages are built already: ${note}.`);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exit(1);
}

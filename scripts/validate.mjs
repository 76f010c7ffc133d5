// @ts-check
// npm run -s validate -- [case or topic …]: the library against the whole corpus of published cases (tests/reference).
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { freshBundle } from './cli/bundle.mjs';

const root = path.dirname(import.meta.dirname);
const rooms = ['quantity', 'catalog', 'calc', 'design', 'assess'].map((room) => `lib/${room}`);
const sources = [...rooms, 'tests/reference', 'tests/calc', 'scripts/cli', 'package-lock.json'];
const bundle = await freshBundle(root, {
  entry: 'tests/reference/validate.ts',
  sources,
  packagesInside: false,
});
const { validate } = await import(pathToFileURL(bundle).href);
const { code, text } = validate(process.argv.slice(2));
console.log(text);
process.exitCode = code;

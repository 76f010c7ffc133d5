// @ts-check
// Checks that every import goes the way the arrows in tools/rooms.cjs say.
import fs from 'node:fs';
import path from 'node:path';
import { cruise, sourcesIn, unknownRooms } from './walls/cruise.mjs';

const root = path.dirname(import.meta.dirname);

const { modules, violations } = cruise(root);
/** @type {string[]} */
const faults = violations.map(({ rule, from, to, why }) => `${from} → ${to}\n    ${rule}: ${why}`);

// A checker that reads nothing finds nothing wrong: each source must be among what it read.
const seen = new Set(modules);
const missed = sourcesIn(root).filter((file) => !seen.has(file));
if (modules.length === 0 || missed.length > 0) {
  faults.push(`The checker of walls did not read ${missed.length} files: ${missed.slice(0, 5).join(', ')}`);
}
for (const room of unknownRooms(root)) {
  faults.push(`lib/${room} is a room without arrows: write them, with reasons, in tools/rooms.cjs`);
}

if (faults.length > 0) {
  console.error(faults.join('\n'));
  console.error(`\n${faults.length} of the imports go through a wall. The arrows stand in tools/rooms.cjs.`);
  process.exit(1);
}
const files = modules.filter(
  (file) => fs.existsSync(path.join(root, file)) && !file.includes('node_modules'),
);
console.log(`${files.length} files, every import goes along an arrow.`);

// The command line is bundled again exactly when a source is newer than the bundle.
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { freshBundle } from '@/scripts/cli/bundle.mjs';

let root = '';
const target = { entry: 'lib/cli/main.ts', sources: ['lib'], packagesInside: true };

beforeAll(() => {
  root = fs.mkdtempSync(path.join(os.tmpdir(), 'pawl-bundle-'));
  fs.mkdirSync(path.join(root, 'lib/cli'), { recursive: true });
  write('lib/word.ts', "export const word: string = 'old';");
  write('lib/cli/main.ts', "import { word } from '@/lib/word';\nexport const says = word;");
});

afterAll(() => fs.rmSync(root, { recursive: true }));

function write(name: string, text: string): void {
  fs.writeFileSync(path.join(root, name), text);
}

/** Files written before now count as a minute old, so that the next write is newer by any clock. */
function age(): void {
  const then = new Date(Date.now() - 60_000);
  for (const name of ['lib', 'lib/cli', 'lib/word.ts', 'lib/cli/main.ts'])
    fs.utimesSync(path.join(root, name), then, then);
}

it('makes a bundle, keeps it while nothing changes and makes it anew after a change', async () => {
  age();
  const file = await freshBundle(root, target);
  expect(fs.readFileSync(file, 'utf8')).toContain('old');

  fs.appendFileSync(file, '// kept');
  expect(fs.readFileSync(await freshBundle(root, target), 'utf8')).toContain('// kept');

  const minuteAgo = new Date(Date.now() - 30_000);
  fs.utimesSync(file, minuteAgo, minuteAgo);
  write('lib/word.ts', "export const word: string = 'new';");
  expect(fs.readFileSync(await freshBundle(root, target), 'utf8')).toContain('new');
});

it('makes it anew when a source is gone', async () => {
  write('lib/spare.ts', 'export const spare = 1;');
  const file = await freshBundle(root, target);
  fs.appendFileSync(file, '// kept');
  age();
  fs.utimesSync(file, new Date(Date.now() - 30_000), new Date(Date.now() - 30_000));
  fs.rmSync(path.join(root, 'lib/spare.ts'));
  expect(fs.readFileSync(await freshBundle(root, target), 'utf8')).not.toContain('// kept');
});

it('leaves no half-written bundle behind when a source has a fault', async () => {
  write('lib/word.ts', 'export const word = ;');
  await expect(freshBundle(root, target)).rejects.toThrow('Unexpected');
  expect(fs.readdirSync(path.join(root, '.build/cli'))).toEqual(['main.mjs']);
});

// @ts-check
// Bundles the command line into one file, packages and all, when its sources are newer than the last bundle.
import fs from 'node:fs';
import path from 'node:path';

/**
 * @typedef {object} Target
 * @property {string} entry a TypeScript file below the project
 * @property {string[]} sources files and folders the bundle is made of
 * @property {boolean} packagesInside whether packages are bundled too, which makes the start much faster
 */

/**
 * @param {string} root the project @param {Target} target
 * @returns {Promise<string>} the file to import
 */
export async function freshBundle(root, { entry, sources, packagesInside }) {
  const outfile = path.join(root, '.build/cli', `${path.basename(entry, '.ts')}.mjs`);
  const made = fs.statSync(outfile, { throwIfNoEntry: false })?.mtimeMs ?? 0;
  if (made > newest(sources.map((source) => path.join(root, source)))) return outfile;
  const began = new Date();
  const { build } = await import('esbuild');
  const half = `${outfile}.${process.pid}`;
  try {
    await build({
      entryPoints: [path.join(root, entry)],
      outfile: half,
      bundle: true,
      platform: 'node',
      format: 'esm',
      target: 'node20',
      // The guard against use in a browser throws outside a page server; a command line is no browser.
      alias: { '@': root, 'server-only': path.join(root, 'node_modules/server-only/empty.js') },
      jsx: 'automatic',
      tsconfigRaw: {},
      logLevel: 'silent',
      ...(packagesInside ? {} : { packages: 'external' }),
    });
    // A source saved while the bundle is made must count as newer.
    fs.utimesSync(half, began, began);
    // Renamed in one go: another command may be about to read it.
    fs.renameSync(half, outfile);
  } finally {
    fs.rmSync(half, { force: true });
  }
  return outfile;
}

/**
 * The time of the newest file or folder: a folder changes when a file in it comes, goes or is renamed.
 * @param {string[]} places @returns {number}
 */
function newest(places) {
  let time = 0;
  for (const place of places) {
    const about = fs.statSync(place, { throwIfNoEntry: false });
    if (!about) continue;
    time = Math.max(time, about.mtimeMs);
    if (about.isDirectory())
      time = Math.max(time, newest(fs.readdirSync(place).map((name) => path.join(place, name))));
  }
  return time;
}

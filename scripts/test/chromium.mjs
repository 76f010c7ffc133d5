// @ts-check
// Finds a Chromium for the browser tests; as root on Debian or Ubuntu, installs the system's own.
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';

const names = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome'];
const places = ['/Applications/Chromium.app/Contents/MacOS/Chromium'];

/** @param {Record<string, string | undefined>} [env] PAWL_CHROMIUM, where set, is taken @returns {string | null} */
export function findChromium(env = process.env) {
  if (env.PAWL_CHROMIUM) return fs.existsSync(env.PAWL_CHROMIUM) ? env.PAWL_CHROMIUM : null;
  const folders = (env.PATH ?? '').split(path.delimiter).filter((folder) => folder !== '');
  const found = names.flatMap((name) => folders.map((folder) => path.join(folder, name)));
  return [...found, ...places].find((file) => fs.existsSync(file)) ?? null;
}

/**
 * @returns {string} the program
 * @throws {Error} with one sentence on how to get one
 */
export function ensureChromium() {
  const found = findChromium();
  if (found) return found;
  const apt = process.getuid?.() === 0 && spawnSync('apt-get', ['--version']).status === 0;
  if (apt && !process.env.PAWL_CHROMIUM) {
    for (const args of [['update'], ['install', '-y', '--no-install-recommends', 'chromium']]) {
      spawnSync('apt-get', [...args, '-q'], {
        stdio: ['ignore', 'ignore', 'inherit'],
        env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
      });
    }
    const installed = findChromium();
    if (installed) return installed;
  }
  throw new Error(
    'The browser tests need a Chromium: install one (Debian: apt-get install chromium) or set PAWL_CHROMIUM to its program.',
  );
}

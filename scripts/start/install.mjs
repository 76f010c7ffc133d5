// @ts-check
// Installs the packages of a lock file when the lock is not the one they were installed from. Built-ins only.
import fs from 'node:fs';
import path from 'node:path';
import { run } from './run.mjs';
import { hashOf, unlessStamped } from './stamp.mjs';

/** @throws {Error} when this Node is too old */
export function checkNode() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  if (major > 20 || (major === 20 && minor >= 19)) return;
  throw new Error(`Pawl needs Node 20.19 or newer; this is ${process.versions.node}.`);
}

/**
 * No install scripts are run: the packages come ready, and two repairs of ours do the rest (see
 * scripts/postgres/binaries.mjs and scripts/start/generate.mjs).
 * @param {string} folder with package.json and package-lock.json
 */
export function install(folder) {
  const stamp = path.join(folder, 'node_modules/.pawl-lock');
  return unlessStamped(stamp, hashOf(folder, ['package-lock.json']), async () => {
    const npm = process.env.npm_execpath;
    const args = ['ci', '--ignore-scripts', '--include=dev', '--no-audit', '--no-fund'];
    const failed = `npm could not install the packages of ${folder}. Is the network reachable?`;
    if (npm && fs.existsSync(npm)) await run(process.execPath, [npm, ...args], { cwd: folder, failed });
    else await run('npm', args, { cwd: folder, failed });
  });
}

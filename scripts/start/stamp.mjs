// @ts-check
// A stamp tells whether something made from sources is still what those sources make.
import crypto from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';

/**
 * One hash over the files, their paths and their contents. Folders are walked; what does not exist counts as
 * such, so that adding it later changes the hash.
 * @param {string} root @param {string[]} parts paths below root
 * @returns {string}
 */
export function hashOf(root, parts) {
  const hash = crypto.createHash('sha256');
  for (const part of parts) {
    for (const file of walk(path.join(root, part))) {
      hash.update(path.relative(root, file)).update('\0');
      hash.update(fs.readFileSync(file)).update('\0');
    }
    hash.update('\n');
  }
  return hash.digest('hex');
}

/** @param {string} place @returns {string[]} files below, in a fixed order */
function walk(place) {
  const about = fs.statSync(place, { throwIfNoEntry: false });
  if (!about) return [];
  if (about.isFile()) return [place];
  return fs
    .readdirSync(place)
    .filter((name) => name !== 'node_modules' && name !== '.DS_Store')
    .sort()
    .flatMap((name) => walk(path.join(place, name)));
}

/** @param {string} file @param {string} hash @returns {boolean} whether the stamp says this hash */
function isStamped(file, hash) {
  return fs.existsSync(file) && fs.readFileSync(file, 'utf8') === hash;
}

/** @param {string} file @param {string} hash */
function writeStamp(file, hash) {
  fs.mkdirSync(path.dirname(file), { recursive: true });
  fs.writeFileSync(file, hash);
}

/**
 * Does the work unless the stamp says it was done for this hash. The stamp is removed before and written only
 * after the work succeeded.
 * @param {string} file @param {string} hash @param {() => Promise<void>} work
 * @returns {Promise<string>} '' when done now, else that nothing changed
 */
export async function unlessStamped(file, hash, work) {
  if (isStamped(file, hash)) return 'nothing changed';
  fs.rmSync(file, { force: true });
  await work();
  writeStamp(file, hash);
  return '';
}

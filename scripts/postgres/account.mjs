// @ts-check
// PostgreSQL refuses to run as root. Started by root, it runs as a lesser account, in folders that account can reach.
import { spawnSync } from 'node:child_process';
import crypto from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { nativeFolder, repairLinks } from './binaries.mjs';

/** @typedef {{ uid: number, gid: number } | null} Account null: the account we run as ourselves */
/** @typedef {{ native: string, home: string, account: Account }} Place programs, folder of the cluster, account */

/** @returns {Account} the account for the server: postgres, else nobody, where we are root */
function lesserAccount() {
  if (process.getuid?.() !== 0) return null;
  for (const name of ['postgres', 'nobody']) {
    // initdb asks for the name behind the number, so the account must be in the system's list.
    const uid = spawnSync('id', ['-u', name], { encoding: 'utf8' });
    const gid = spawnSync('id', ['-g', name], { encoding: 'utf8' });
    if (uid.status === 0 && gid.status === 0) return { uid: Number(uid.stdout), gid: Number(gid.stdout) };
  }
  throw new Error(
    'PostgreSQL does not run as root and there is no account "postgres" or "nobody". ' +
      'Start Pawl as another user, or set DATABASE_URL to a database of your own.',
  );
}

/** @param {Account} account @param {'-x' | '-w'} test @param {string} file */
function may(account, test, file) {
  if (!account) return true;
  return spawnSync('/bin/sh', ['-c', `test ${test} "$1"`, 'sh', file], { ...account, cwd: '/' }).status === 0;
}

/**
 * Makes a folder and hands it to the account.
 * @param {string} folder @param {Account} account
 */
export function makeFolder(folder, account) {
  fs.mkdirSync(folder, { recursive: true, mode: 0o700 });
  if (account) fs.chownSync(folder, account.uid, account.gid);
}

/**
 * Where the server's programs and its data go. In a folder the account cannot reach (a private home), the data
 * lies under the system's state folder instead, under a key made of the wanted path, with a copy of the programs.
 * @param {string} root the project
 * @param {string} dataFolder
 * @returns {Place}
 */
export function choosePlace(root, dataFolder) {
  const native = nativeFolder(root);
  repairLinks(native);
  const account = lesserAccount();
  const home = path.join(dataFolder, 'postgres');
  if (!account) {
    makeFolder(home, null);
    return { native, home, account };
  }
  const key = crypto.createHash('sha256').update(path.resolve(dataFolder)).digest('hex').slice(0, 16);
  const state = path.join('/var/lib/pawl', key);
  let chosen = home;
  if (may(account, '-x', dataFolder)) makeFolder(home, account);
  if (!may(account, '-w', home)) {
    fs.mkdirSync('/var/lib/pawl', { recursive: true, mode: 0o755 });
    chosen = state;
    makeFolder(chosen, account);
  }
  if (may(account, '-x', path.join(native, 'bin/postgres'))) return { native, home: chosen, account };
  return { native: copyPrograms(native), home: chosen, account };
}

/**
 * @param {string} native
 * @returns {string} the same programs where every account can reach them, copied once a version
 */
function copyPrograms(native) {
  const about = fs.readFileSync(path.join(path.dirname(native), 'package.json'));
  const key = crypto.createHash('sha256').update(about).digest('hex').slice(0, 16);
  const copy = path.join('/var/lib/pawl', `programs-${key}`, 'native');
  if (!fs.existsSync(copy)) {
    const half = `${copy}.${process.pid}`;
    fs.mkdirSync(path.dirname(copy), { recursive: true, mode: 0o755 });
    fs.cpSync(native, half, { recursive: true, verbatimSymlinks: true });
    fs.renameSync(half, copy);
  }
  return copy;
}

// @ts-check
// Creates the data folder of the embedded PostgreSQL, once, the same on every machine.
import { spawnSync } from 'node:child_process';
import crypto from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { makeFolder } from './account.mjs';

/** The one account inside the embedded server. */
export const databaseUser = 'pawl';

/** @param {import('./account.mjs').Place} place */
const clusterFolder = ({ home }) => path.join(home, 'cluster');

/** @param {string} cluster */
const isWhole = (cluster) => fs.existsSync(path.join(cluster, 'PG_VERSION'));

/**
 * @param {string} dataFolder
 * @param {import('./account.mjs').Place} place
 * @returns {string} the password of the embedded server, made at the first call and kept for its owner only
 */
export function databasePassword(dataFolder, place) {
  const file = path.join(dataFolder, 'postgres-password');
  if (fs.existsSync(file)) return fs.readFileSync(file, 'utf8').trim();
  if (isWhole(clusterFolder(place))) {
    throw new Error(
      `The database in ${place.home} is there but its password is not. Put the file ${file} back from a copy.`,
    );
  }
  const password = crypto.randomBytes(24).toString('base64url');
  fs.writeFileSync(file, `${password}\n`, { mode: 0o600, flag: 'wx' });
  return password;
}

/**
 * Makes the cluster unless it is there. It is built beside its place and moved there when whole, so that a
 * kill in the middle leaves no half cluster.
 * @param {import('./account.mjs').Place} place
 * @param {string} password
 * @returns {string} the cluster's folder
 */
export function ensureCluster(place, password) {
  const { native, home, account } = place;
  const cluster = clusterFolder(place);
  if (isWhole(cluster)) return cluster;
  const half = path.join(home, 'cluster.half');
  fs.rmSync(half, { recursive: true, force: true });
  makeFolder(half, account);
  const secret = path.join(home, 'first-password');
  fs.writeFileSync(secret, password, { mode: 0o600 });
  if (account) fs.chownSync(secret, account.uid, account.gid);
  const options = [
    ['-D', half, '-U', databaseUser, '-A', 'scram-sha-256', '--pwfile', secret, '-E', 'UTF8'],
    ['--locale=C', '--locale-provider=builtin', '--builtin-locale=C.UTF-8'],
  ].flat();
  const run = spawnSync(path.join(native, 'bin/initdb'), options, {
    encoding: 'utf8',
    cwd: home,
    ...(account ?? {}),
  });
  fs.rmSync(secret, { force: true });
  if (run.status !== 0) {
    const why = run.error?.message ?? `${run.stdout}\n${run.stderr}`.trim();
    throw new Error(`PostgreSQL could not create its data folder in ${home}:\n${why}`);
  }
  fs.renameSync(half, cluster);
  return cluster;
}

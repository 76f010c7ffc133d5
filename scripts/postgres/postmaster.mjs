// @ts-check
// Reads postmaster.pid, PostgreSQL's own note of the server that holds a data folder.
import fs from 'node:fs';
import path from 'node:path';
import { commandOf, isAlive } from './process.mjs';

/** @typedef {{ pid: number, port: number, ready: boolean }} Postmaster */

/**
 * @param {string} cluster the data folder
 * @returns {Postmaster | null} null when there is no note, or it is not yet whole
 */
export function readPostmaster(cluster) {
  let lines;
  try {
    lines = fs.readFileSync(path.join(cluster, 'postmaster.pid'), 'utf8').split('\n');
  } catch {
    return null;
  }
  const pid = Number(lines[0]);
  const port = Number(lines[3]);
  if (!Number.isInteger(pid) || pid <= 0) return null;
  return { pid, port, ready: lines[7]?.trim() === 'ready' };
}

/**
 * The server that a killed starter left behind, still alive on this data folder. A note whose process is gone,
 * or belongs to a stranger who was given the same number, is removed: PostgreSQL then recovers by itself.
 * @param {string} cluster
 * @returns {Postmaster | null}
 */
export function survivor(cluster) {
  const note = readPostmaster(cluster);
  if (note && isAlive(note.pid) && isServerOf(note.pid, cluster)) return note;
  fs.rmSync(path.join(cluster, 'postmaster.pid'), { force: true });
  return null;
}

/**
 * Whether the process is a PostgreSQL server on this folder. The server works inside its data folder; where the
 * system does not tell a process's folder, being PostgreSQL at all is taken for it, as removing the note of a
 * live server would be the worse mistake.
 * @param {number} pid @param {string} cluster
 */
function isServerOf(pid, cluster) {
  if (!/postgres/.test(commandOf(pid))) return false;
  try {
    return fs.readlinkSync(`/proc/${pid}/cwd`) === fs.realpathSync(cluster);
  } catch {
    return true;
  }
}

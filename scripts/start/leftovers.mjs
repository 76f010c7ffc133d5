// @ts-check
// Remembers the processes of a run, so that the next start can end what a killed one left behind.
import fs from 'node:fs';
import path from 'node:path';
import { endProcess, startedAt } from '../postgres/process.mjs';

/** @typedef {{ pid: number, since: string | null }} Remembered a pid alone may be given to a stranger */
/** @typedef {{ url: string, starter: Remembered, web: Remembered | null }} Run */

/** @param {string} dataFolder */
const fileOf = (dataFolder) => path.join(dataFolder, 'run.json');

/** @param {number} pid @returns {Remembered} */
const remember = (pid) => ({ pid, since: startedAt(pid) });

/** @param {Remembered | null} one */
const stillRuns = (one) => one !== null && one.since !== null && startedAt(one.pid) === one.since;

/** @param {string} dataFolder @returns {Run | null} */
function read(dataFolder) {
  try {
    return JSON.parse(fs.readFileSync(fileOf(dataFolder), 'utf8'));
  } catch {
    return null;
  }
}

/**
 * @param {string} dataFolder
 * @returns {Promise<void>}
 * @throws {Error} when another Pawl runs on this data folder
 */
export async function endLeftovers(dataFolder) {
  const last = read(dataFolder);
  if (!last) return;
  if (stillRuns(last.starter)) {
    throw new Error(
      `Pawl already runs on this data folder: ${last.url} (process ${last.starter.pid}). ` +
        'Stop it first, or set PAWL_DATA and PORT for a second one.',
    );
  }
  if (last.web && stillRuns(last.web)) await endProcess(last.web.pid);
  fs.rmSync(fileOf(dataFolder), { force: true });
}

/** @param {string} dataFolder @param {string} url @param {number | null} webPid */
export function rememberRun(dataFolder, url, webPid) {
  /** @type {Run} */
  const run = { url, starter: remember(process.pid), web: webPid === null ? null : remember(webPid) };
  const half = `${fileOf(dataFolder)}.half`;
  fs.writeFileSync(half, JSON.stringify(run));
  fs.renameSync(half, fileOf(dataFolder));
}

/** @param {string} dataFolder */
export function forgetRun(dataFolder) {
  fs.rmSync(fileOf(dataFolder), { force: true });
}

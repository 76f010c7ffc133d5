// @ts-check
// What the operating system knows about a process: whether it lives, since when, and what it is.
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';

/** @param {string} field @param {number} pid @returns {string} what `ps` says, or '' when it knows nothing */
function ps(field, pid) {
  try {
    return execFileSync('ps', ['-o', `${field}=`, '-p', String(pid)], {
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    }).trim();
  } catch {
    return '';
  }
}

/**
 * The fields of /proc/<pid>/stat after the command name (which may itself hold spaces and brackets).
 * @param {number} pid
 * @returns {string[] | null} null where there is no such file (process gone, or a system without /proc)
 */
function procStat(pid) {
  try {
    const text = fs.readFileSync(`/proc/${pid}/stat`, 'utf8');
    return text.slice(text.lastIndexOf(')') + 2).split(' ');
  } catch {
    return null;
  }
}

const hasProc = fs.existsSync('/proc/self/stat');

/**
 * Whether the process runs. A zombie does not: where pid 1 reaps no orphans, signal 0 reaches it for ever.
 * @param {number} pid
 */
export function isAlive(pid) {
  try {
    process.kill(pid, 0);
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : '';
    if (code !== 'EPERM') return false;
  }
  const state = hasProc ? (procStat(pid)?.[0] ?? 'Z') : ps('stat', pid);
  return state !== '' && !state.startsWith('Z') && !state.startsWith('X');
}

/**
 * When the process was started, as an opaque text. With the pid it names one process for good: a pid alone
 * may be given to a stranger.
 * @param {number} pid
 * @returns {string | null} null when it does not run
 */
export function startedAt(pid) {
  if (!isAlive(pid)) return null;
  return hasProc ? (procStat(pid)?.[19] ?? null) : ps('lstart', pid) || null;
}

/** @param {number} pid @returns {string} the command line, or '' */
export function commandOf(pid) {
  try {
    return hasProc
      ? fs.readFileSync(`/proc/${pid}/cmdline`, 'utf8').replaceAll('\0', ' ').trim()
      : ps('command', pid);
  } catch {
    return '';
  }
}

/** @param {number} ms */
export const pause = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

/**
 * @param {number} pid @param {number} ms
 * @returns {Promise<boolean>} whether the process was gone within that time
 */
async function waitGone(pid, ms) {
  const until = Date.now() + ms;
  while (isAlive(pid)) {
    if (Date.now() > until) return false;
    await pause(30);
  }
  return true;
}

/**
 * Ends a process: first the polite signal, then, after the time of grace, the other.
 * @param {number} pid
 * @param {{ polite?: NodeJS.Signals, firm?: NodeJS.Signals, graceMs?: number }} [how]
 */
export async function endProcess(pid, { polite = 'SIGTERM', firm = 'SIGKILL', graceMs = 8000 } = {}) {
  for (const signal of [polite, firm]) {
    if (!isAlive(pid)) return;
    try {
      process.kill(pid, signal);
    } catch {
      // It ended between the look and the signal.
    }
    if (await waitGone(pid, graceMs)) return;
  }
}

// @ts-check
// The web process: starts it, waits until it answers, ends it.
import { spawn } from 'node:child_process';
import net from 'node:net';
import path from 'node:path';
import { endProcess, pause } from '../postgres/process.mjs';

/**
 * @typedef {object} Web
 * @property {number} pid
 * @property {Promise<string>} ended says how, when it ended by itself or otherwise
 * @property {() => Promise<void>} stop
 */

const patienceMs = 60_000;

/**
 * Megabytes of young and old objects before the engine clears up in earnest. Left alone it lets rubbish of large pages
 * pile up to gigabytes on a machine that has them; a club's machine has other things to do. NODE_OPTIONS goes before.
 */
const heapMegabytes = 640;

/**
 * Megabytes of the space for young objects. A large page's text outlives the engine's usual 16 and would be moved to the
 * old ones, to be cleared up at far greater cost.
 */
const youngMegabytes = 64;

/**
 * @param {{ host: string, port: number }} address
 * @throws {Error} when something else listens there
 */
export function checkPort({ host, port }) {
  return new Promise((resolve, reject) => {
    const probe = net.createServer();
    probe.once('error', (error) => {
      const taken = 'code' in error && error.code === 'EADDRINUSE';
      const why = taken ? 'is used by another program. Choose another: PORT=3100 npm start' : error.message;
      reject(new Error(`Port ${port} on ${host} ${why}`));
    });
    probe.listen(port, host, () => probe.close(() => resolve(undefined)));
  });
}

/**
 * Detached: Ctrl-C reaches the starter alone, which then ends things in their order.
 * @param {string} root @param {{ host: string, port: number }} address @param {Record<string, string>} env
 * @returns {Web}
 */
export function startWeb(root, { host, port }, env) {
  const next = path.join(root, 'node_modules/next/dist/bin/next');
  const limit = process.env.NODE_OPTIONS?.includes('max-old-space-size')
    ? []
    : [`--max-old-space-size=${heapMegabytes}`, `--max-semi-space-size=${youngMegabytes}`];
  const child = spawn(process.execPath, [...limit, next, 'start', '-H', host, '-p', String(port)], {
    cwd: root,
    detached: true,
    env: { ...process.env, ...env, NODE_ENV: 'production', NEXT_TELEMETRY_DISABLED: '1' },
    // Its greeting on stdout says what we say ourselves; what goes wrong goes to stderr and is shown.
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  /** @type {Promise<string>} */
  const ended = new Promise((resolve) => {
    child.once('error', (error) => resolve(error.message));
    child.once('exit', (code, signal) => resolve(signal ? `signal ${signal}` : `exit code ${code}`));
  });
  const pid = child.pid ?? 0;
  return { pid, ended, stop: () => (pid === 0 ? Promise.resolve() : endProcess(pid)) };
}

/**
 * Waits until /api/health says that the service, with its database, is well.
 * @param {string} url @param {Web} web
 */
export async function untilHealthy(url, web) {
  let last = 'it gave no answer';
  let end = '';
  web.ended.then((how) => {
    end = how;
  });
  const until = Date.now() + patienceMs;
  while (Date.now() < until) {
    if (end) throw new Error(`The web process ended before it was ready (${end}).`);
    try {
      const answer = await fetch(`${url}/api/health`, { signal: AbortSignal.timeout(5000) });
      const text = await answer.text();
      if (answer.ok) return;
      last = `it answered ${answer.status}: ${text.slice(0, 300)}`;
    } catch (error) {
      last = error instanceof Error ? error.message : String(error);
    }
    await pause(50);
  }
  throw new Error(`The service was not ready within ${patienceMs / 1000} s: ${last}`);
}

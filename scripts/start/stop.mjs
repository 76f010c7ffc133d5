// @ts-check
// One way out for every ending: a signal, a lost parent, a failed step, a process that died.
import { isAlive } from '../postgres/process.mjs';
import { endRunning } from './run.mjs';

/** @type {(() => Promise<void> | void)[]} */
const undo = [];

let ending = false;

/**
 * What to do at the end; done in the opposite order.
 * @param {() => Promise<void> | void} action
 */
export function onStop(action) {
  undo.push(action);
}

/** @param {number} code @returns {Promise<never>} */
async function shutdown(code) {
  if (ending) return new Promise(() => {});
  ending = true;
  endRunning();
  for (const action of undo.reverse()) {
    try {
      await action();
    } catch (error) {
      console.error(error instanceof Error ? error.message : error);
    }
  }
  process.exit(code);
}

/** @param {unknown} error @returns {Promise<never> | undefined} */
function fail(error) {
  // A step that fails because the run is being stopped is no news.
  if (ending) return undefined;
  console.error(`\n${error instanceof Error ? error.message : error}`);
  return shutdown(1);
}

/**
 * Listens for the end. npm passes SIGTERM on to its shell only, not to us: what we notice is that our parent
 * is another.
 */
function watch() {
  for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM', 'SIGHUP'])) {
    process.on(signal, () => shutdown(0));
  }
  // A terminal that closed must not stop the stopping.
  process.stdout.on('error', () => {});
  process.stderr.on('error', () => {});
  if (!process.env.npm_lifecycle_event) return;
  const parent = process.ppid;
  setInterval(() => {
    if (process.ppid !== parent) shutdown(0);
  }, 500).unref();
}

/**
 * Ends the run when one of its processes ended by itself.
 * @param {import('./web.mjs').Web} web @param {import('../postgres/server.mjs').Server | null} server
 */
function whenEither(web, server) {
  web.ended.then((how) => fail(new Error(`The web process ended (${how}). Start again with: npm start`)));
  if (!server) return;
  // Asked, not listened for: an adopted server is not our child.
  setInterval(() => {
    if (!isAlive(server.pid)) {
      fail(new Error('The database server ended. It mends itself when you start again: npm start'));
    }
  }, 1000).unref();
}

export const stopping = { watch, fail, whenEither };

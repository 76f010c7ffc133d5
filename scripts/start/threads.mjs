// @ts-check
// Bundles the program of the threads that simulate (lib/work) when its sources are newer: a thread is started from a file.
import { freshBundle } from '../cli/bundle.mjs';

const rooms = ['quantity', 'catalog', 'calc', 'design', 'assess', 'work'];

/** @param {string} root @returns {Promise<string>} the file, as lib/work/gain-map/pool looks for it */
export function bundleThreads(root) {
  const sources = [...rooms.map((room) => `lib/${room}`), 'scripts/cli', 'package-lock.json'];
  return freshBundle(root, { entry: 'lib/work/gain-map/thread.ts', sources, packagesInside: true });
}

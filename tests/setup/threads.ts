/** Bundles the program of the threads that simulate, for the tests that have maps worked. */
import path from 'node:path';
import { bundleThreads } from '../../scripts/start/threads.mjs';

export default async function setup() {
  await bundleThreads(path.resolve(import.meta.dirname, '../..'));
}

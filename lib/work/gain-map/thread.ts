// The program of a thread: simulates the spots it is given. Bundled into one file of its own (scripts/start/threads.mjs).
import os from 'node:os';
import { parentPort } from 'node:worker_threads';
import { gainMapCell, type PreparedGainMap, prepareGainMap } from '@/lib/assess/gain-map';
import type { Answer, Farewell, Share } from './messages';

/** What all spots of a job have in common, or why none can be simulated. */
const jobs = new Map<number, PreparedGainMap | string>();

stepBack();
parentPort?.on('message', (message: Share | Farewell) => {
  if (message.spots === null) jobs.delete(message.job);
  else parentPort?.postMessage(answerTo(message));
});

function answerTo({ job, spots, document }: Share): Answer {
  try {
    if (document !== null) jobs.set(job, prepareGainMap(document));
    const prepared = jobs.get(job) ?? 'The document did not come with the first share.';
    if (typeof prepared === 'string') return { job, failure: prepared };
    return { job, cells: spots.map(([gain, load]) => gainMapCell(prepared, gain, load)) };
  } catch (error) {
    return { job, failure: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
}

/** Pages go first. Linux knows a priority for each thread; elsewhere it would be that of the whole process. */
function stepBack(): void {
  if (process.platform !== 'linux') return;
  try {
    os.setPriority(10);
  } catch {
    // It may not be lowered here: the work is done all the same.
  }
}

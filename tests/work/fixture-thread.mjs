// A thread for the tests of the pool: its cells say which spot they are of. The title of the document says how it behaves.
import { parentPort, threadId } from 'node:worker_threads';

const titles = new Map();

parentPort.on('message', ({ job, spots, document }) => {
  if (spots === null) {
    titles.delete(job);
    return;
  }
  if (document !== null) titles.set(job, document.title);
  const title = titles.get(job);
  if (title === 'dies') throw new Error('this thread dies');
  if (title === 'fails') {
    parentPort.postMessage({ job, failure: 'this document fails' });
    return;
  }
  const until = performance.now() + (title === 'slow' ? 40 : 1);
  while (performance.now() < until);
  const cells = spots.map(([gain, load]) => ({
    verdict: title === undefined ? 'unstable' : 'good',
    overshoot: gain,
    settling: load,
    limitCycle: threadId,
  }));
  parentPort.postMessage({ job, cells });
});

// Threads that simulate the cells of gain maps, two of them: the machine we design for has two cores. They start with the
// first job and end when there has been none for a while.
import path from 'node:path';
import { Worker } from 'node:worker_threads';
import type { GainMapCell } from '@/lib/assess/gain-map';
import type { Design } from '@/lib/design/document';
import type { Answer, Farewell, Share, Spot } from './messages';

/** So few that stopping and counting are prompt, so many that talking costs nothing. */
const spotsAShare = 8;
const idleMs = 60_000;

/** Where the bundle of thread.ts lies, below the folder that the service runs in. */
export const threadFile = '.build/cli/thread.mjs';

/** One map under way. */
export interface PoolJob {
  readonly document: Design;
  readonly spots: readonly Spot[];
  /** Some cells are there, of the spots from `from` on. */
  readonly onCells: (from: number, cells: readonly GainMapCell[]) => void;
  readonly onDone: () => void;
  readonly onFailure: (why: string) => void;
}

interface Entry extends PoolJob {
  readonly id: number;
  /** How many spots were handed out, and how many came back. */
  given: number;
  back: number;
}

interface Thread {
  readonly worker: Worker;
  /** Jobs whose document it has. */
  readonly knows: Set<number>;
  busy: { readonly job: number; readonly from: number } | null;
}

export class ThreadPool {
  readonly #threads: Thread[] = [];
  /** The next share is that of the first, which then goes to the end: jobs advance side by side. */
  #jobs: Entry[] = [];
  #count = 0;
  #idle: NodeJS.Timeout | undefined;

  /** @param file the program of a thread @param size how many threads */
  constructor(
    readonly file: string = path.join(process.cwd(), threadFile),
    readonly size = 2,
  ) {}

  /** Starts a job; the answer stops it, after which nothing of it is told any more. */
  start(job: PoolJob): () => void {
    clearTimeout(this.#idle);
    const entry: Entry = { ...job, id: ++this.#count, given: 0, back: 0 };
    this.#jobs.push(entry);
    while (this.#threads.length < this.size) this.#threads.push(this.#thread());
    this.#handOut();
    return () => this.#end(entry.id);
  }

  /** Ends all threads; jobs under way are forgotten. */
  async close(): Promise<void> {
    clearTimeout(this.#idle);
    this.#jobs = [];
    await Promise.all(this.#threads.splice(0).map(({ worker }) => worker.terminate()));
  }

  #thread(): Thread {
    // A path made at run time, which the bundler must leave alone.
    const worker = new Worker(/* turbopackIgnore: true */ this.file);
    const thread: Thread = { worker, knows: new Set(), busy: null };
    worker.on('message', (answer: Answer) => this.#take(thread, answer));
    worker.on('error', (error) => this.#lose(thread, error));
    // A thread without work keeps no program running.
    worker.unref();
    return thread;
  }

  #handOut(): void {
    for (const thread of this.#threads) {
      const next = thread.busy === null ? this.#jobs.find((j) => j.given < j.spots.length) : undefined;
      if (next === undefined) continue;
      const from = next.given;
      const spots = next.spots.slice(from, from + spotsAShare);
      next.given += spots.length;
      this.#jobs = [...this.#jobs.filter((j) => j !== next), next];
      thread.busy = { job: next.id, from };
      const share: Share = {
        job: next.id,
        spots,
        document: thread.knows.has(next.id) ? null : next.document,
      };
      thread.knows.add(next.id);
      thread.worker.ref();
      thread.worker.postMessage(share);
    }
  }

  #take(thread: Thread, answer: Answer): void {
    const from = thread.busy?.from ?? 0;
    thread.busy = null;
    thread.worker.unref();
    const job = this.#jobs.find((j) => j.id === answer.job);
    if (job === undefined) this.#forget(thread, answer.job);
    else if ('failure' in answer) this.#fail(job, answer.failure);
    else {
      job.back += answer.cells.length;
      job.onCells(from, answer.cells);
      if (job.back === job.spots.length) {
        this.#end(job.id);
        job.onDone();
      }
    }
    this.#handOut();
  }

  /** A thread that died takes the job it was at with it, and no other; one takes its place. */
  #lose(thread: Thread, error: Error): void {
    const at = this.#threads.indexOf(thread);
    if (at < 0) return;
    this.#threads.splice(at, 1);
    const job = this.#jobs.find((j) => j.id === thread.busy?.job);
    if (job !== undefined) this.#fail(job, error.stack ?? error.message);
    if (this.#jobs.length === 0) return;
    this.#threads.push(this.#thread());
    this.#handOut();
  }

  #fail(job: Entry, why: string): void {
    this.#end(job.id);
    job.onFailure(why);
  }

  #end(id: number): void {
    this.#jobs = this.#jobs.filter((j) => j.id !== id);
    for (const thread of this.#threads) if (thread.busy?.job !== id) this.#forget(thread, id);
    if (this.#jobs.length > 0) return;
    clearTimeout(this.#idle);
    this.#idle = setTimeout(() => void this.close(), idleMs).unref();
  }

  #forget(thread: Thread, job: number): void {
    if (!thread.knows.delete(job)) return;
    const farewell: Farewell = { job, spots: null };
    thread.worker.postMessage(farewell);
  }
}

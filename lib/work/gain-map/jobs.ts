// The maps under way in this process, each once however many ask for it.
import type { GainMapCell, GainMapPlan } from '@/lib/assess/gain-map';
import type { Design } from '@/lib/design/document';
import type { Spot } from './messages';
import { ThreadPool } from './pool';

/** More at once are refused: they would all be slow. */
const mostJobs = 6;

/** How far a job is: cells simulated, of how many; how it ended, once it has. */
export interface Progress {
  readonly done: number;
  readonly total: number;
  readonly end: 'kept' | 'stopped' | 'failed' | null;
}

export interface Job {
  readonly progress: () => Progress;
  /** Called at each change, and at once; the answer ends the listening. */
  readonly watch: (listener: (progress: Progress) => void) => () => void;
  /** How it ends; never rejects. */
  readonly ended: Promise<Progress>;
}

export interface JobToStart {
  readonly document: Design;
  readonly plan: GainMapPlan;
  /** Who asks: the job stops when nobody who asked wants it any more. */
  readonly asker: string;
  /** Takes the cells, load by load from the least, each from the least gain. */
  readonly keep: (cells: readonly GainMapCell[]) => Promise<void>;
}

interface Entry extends Job {
  readonly askers: Set<string>;
  readonly stop: () => void;
}

export class GainMapJobs {
  readonly #jobs = new Map<string, Entry>();

  constructor(readonly pool: ThreadPool = new ThreadPool()) {}

  /** The job under a key while it is under way. */
  find(key: string): Job | null {
    return this.#jobs.get(key) ?? null;
  }

  /** Joins the job under the key, or starts it; null when there are too many. */
  start(key: string, wanted: JobToStart): Job | null {
    const known = this.#jobs.get(key);
    if (known !== undefined) {
      known.askers.add(wanted.asker);
      return known;
    }
    if (this.#jobs.size >= mostJobs) return null;
    const job = this.#begin(wanted, () => this.#jobs.delete(key));
    this.#jobs.set(key, job);
    return job;
  }

  /** Takes back what someone asked; stops the job when they were the last. */
  stop(key: string, asker: string): void {
    const job = this.#jobs.get(key);
    if (job?.askers.delete(asker) && job.askers.size === 0) job.stop();
  }

  #begin({ document, plan, asker, keep }: JobToStart, over: () => void): Entry {
    const spots = plan.loads.flatMap((load) => plan.gains.map((gain): Spot => [gain, load]));
    const cells: GainMapCell[] = [];
    const listeners = new Set<(progress: Progress) => void>();
    let now: Progress = { done: 0, total: spots.length, end: null };
    let tellEnd: (progress: Progress) => void = () => {};
    const ended = new Promise<Progress>((resolve) => {
      tellEnd = resolve;
    });
    const tell = (change: Partial<Progress>) => {
      if (now.end !== null) return;
      now = { ...now, ...change };
      if (now.end !== null) {
        over();
        tellEnd(now);
      }
      for (const listener of [...listeners]) listener(now);
    };
    const fail = (why: unknown) => {
      console.error(JSON.stringify({ at: new Date().toISOString(), work: 'gain map', error: String(why) }));
      tell({ end: 'failed' });
    };
    const stopWork = this.pool.start({
      document,
      spots,
      onCells: (from, some) => {
        some.forEach((cell, i) => {
          cells[from + i] = cell;
        });
        tell({ done: now.done + some.length });
      },
      onDone: () => void keep(cells).then(() => tell({ end: 'kept' }), fail),
      onFailure: fail,
    });
    return {
      askers: new Set([asker]),
      progress: () => now,
      ended,
      watch: (listener) => {
        listeners.add(listener);
        listener(now);
        return () => listeners.delete(listener);
      },
      stop: () => {
        stopWork();
        tell({ end: 'stopped' });
      },
    };
  }
}

// On globalThis, because the parts of the server load this file each for itself and must share the threads.
const shared = globalThis as typeof globalThis & { pawlGainMaps?: GainMapJobs };

export function gainMapJobs(): GainMapJobs {
  shared.pawlGainMaps ??= new GainMapJobs();
  return shared.pawlGainMaps;
}

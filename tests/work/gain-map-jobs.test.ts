// Maps under way: every cell comes back in its place, whoever is last to want one can stop it, and what fails says so.
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { GainMapCell, GainMapPlan } from '@/lib/assess/gain-map';
import { starters } from '@/lib/design/starters/registry';
import { GainMapJobs, type JobToStart, type Progress } from '@/lib/work/gain-map/jobs';
import { ThreadPool } from '@/lib/work/gain-map/pool';

const plan: GainMapPlan = {
  gains: Array.from({ length: 10 }, (_, i) => i + 1),
  loads: Array.from({ length: 7 }, (_, i) => i / 3),
  present: 3,
  suggested: null,
};

let pool: ThreadPool;
let jobs: GainMapJobs;

beforeEach(() => {
  pool = new ThreadPool(path.join(import.meta.dirname, 'fixture-thread.mjs'));
  jobs = new GainMapJobs(pool);
});

afterEach(() => pool.close());

function wanted(title: string, over: Partial<JobToStart> = {}): JobToStart {
  const document = { ...starters.lifter.document, title };
  return { document, plan, asker: 'ada', keep: async () => {}, ...over };
}

function started(key: string, job: JobToStart) {
  const begun = jobs.start(key, job);
  if (begun === null) throw new Error('refused');
  return begun;
}

describe('a map under way', () => {
  it('gives every cell in its place, from two threads', async () => {
    let kept: readonly GainMapCell[] = [];
    const keep = async (cells: readonly GainMapCell[]) => {
      kept = cells;
    };
    const end = await started('one', wanted('quick', { keep })).ended;
    expect(end).toEqual({ done: 70, total: 70, end: 'kept' });
    expect(kept.map((c) => [c.overshoot, c.settling])).toEqual(
      plan.loads.flatMap((load) => plan.gains.map((gain) => [gain, load])),
    );
    expect(kept.every((c) => c.verdict === 'good')).toBe(true);
    expect(new Set(kept.map((c) => c.limitCycle)).size).toBe(2);
  });

  it('tells each listener how far it is, never backwards, and how it ended', async () => {
    const job = started('one', wanted('quick'));
    const heard: Progress[] = [];
    job.watch((p) => heard.push(p));
    await job.ended;
    expect(heard[0]).toEqual({ done: 0, total: 70, end: null });
    expect(heard.length).toBeGreaterThan(5);
    expect(heard.map((p) => p.done)).toEqual(heard.map((p) => p.done).toSorted((a, b) => a - b));
    expect(heard.at(-1)).toEqual({ done: 70, total: 70, end: 'kept' });
  });

  it('is one for all who ask, and stops when the last of them wants it no more', async () => {
    const keep = vi.fn(async () => {});
    const job = started('one', wanted('slow', { keep }));
    expect(jobs.start('one', wanted('slow', { asker: 'mo' }))).toBe(job);
    jobs.stop('one', 'ada');
    jobs.stop('one', 'a stranger');
    expect(job.progress().end).toBeNull();
    expect(jobs.find('one')).toBe(job);
    jobs.stop('one', 'mo');
    expect((await job.ended).end).toBe('stopped');
    expect(jobs.find('one')).toBeNull();
    expect(keep).not.toHaveBeenCalled();
    // The threads are free again.
    expect((await started('two', wanted('quick')).ended).end).toBe('kept');
  });

  it('advances beside others: one begun later does not wait for the end of one before', async () => {
    const [first, second] = [started('first', wanted('slow')), started('second', wanted('slow'))];
    const firstDoneAt: number[] = [];
    second.watch(({ done }) => {
      if (done > 0) firstDoneAt.push(first.progress().done);
    });
    await Promise.all([first.ended, second.ended]);
    // Shares are handed out in turn: the first has had a few of its nine by then.
    expect(firstDoneAt[0]).toBeLessThan(40);
  });

  it('is refused when too many are', () => {
    for (let i = 0; i < 6; i++) started(`job ${i}`, wanted('slow'));
    expect(jobs.start('one too many', wanted('slow'))).toBeNull();
  });
});

describe('a map that fails', () => {
  it.each([
    ['whose document cannot be simulated', wanted('fails'), 'this document fails'],
    ['whose thread dies', wanted('dies'), 'this thread dies'],
    [
      'which cannot be kept',
      wanted('quick', { keep: () => Promise.reject(new Error('the database is down')) }),
      'the database is down',
    ],
  ])('%s ends so, the log says why, and the next one is worked', async (_name, job, why) => {
    const log = vi.spyOn(console, 'error').mockImplementation(() => {});
    expect((await started('one', job).ended).end).toBe('failed');
    expect(log.mock.calls.join(' ')).toContain(why);
    log.mockRestore();
    expect((await started('two', wanted('quick')).ended).end).toBe('kept');
  });
});

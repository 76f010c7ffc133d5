// A whole map of gains against loads to be timed, by the very threads that the service uses.
import { gainMapPlan } from '@/lib/assess/gain-map';
import { starters } from '@/lib/design/starters/registry';
import { GainMapJobs } from '@/lib/work/gain-map/jobs';
import { ThreadPool } from '@/lib/work/gain-map/pool';

const { title, document } = starters.lifter;

export function gainMapOf() {
  const plan = gainMapPlan(document);
  if (typeof plan === 'string') throw new Error(`The starter “${title}” has no gain map: ${plan}`);
  const pool = new ThreadPool();
  const jobs = new GainMapJobs(pool);
  return {
    what: `Gain map of the starter “${title}”, ${plan.gains.length} × ${plan.loads.length}`,
    /** Simulates every cell; nothing is kept. */
    simulated: async () => {
      const job = jobs.start('bench', { document, plan, asker: 'bench', keep: async () => {} });
      if ((await job?.ended)?.end !== 'kept') throw new Error('The map was not simulated.');
    },
    close: () => pool.close(),
  };
}

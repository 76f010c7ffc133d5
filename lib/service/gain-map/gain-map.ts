// The map of gains against loads of a revision: read when it is kept, simulated beside the pages when it is not.
// Whoever may read the design may have it worked: nothing of the design changes by it.
import { type GainMapPlan, gainMapPlan } from '@/lib/assess/gain-map';
import { methodVersion } from '@/lib/assess/method';
import { reader } from '@/lib/store/database';
import { type GainMapKey, keepGainMap, readGainMap } from '@/lib/store/designs/gain-maps';
import { type KeptRevision, readRevision } from '@/lib/store/designs/revisions';
import { gainMapJobs } from '@/lib/work/gain-map/jobs';
import type { Contract } from '../contract';
import { designHead } from '../designs/head';
import * as inputs from '../inputs/designs';
import { done, type Result, refused } from '../result';
import { type DesignContext, designCase } from '../use-case';
import type { GainMapState } from '../views/gain-map';

export const gainMap: Contract['gainMap'] = designCase(
  'design.read',
  inputs.gainMap,
  async (context, input) => {
    const asked = await askedFor(context, input.letter);
    if (!asked.ok) return asked;
    const { documentHash } = asked.value.revision;
    return done({
      design: designHead(context),
      letter: input.letter,
      documentHash,
      method: methodVersion,
      map: await stateOf(asked.value),
    });
  },
);

/** Starts the map, or joins it where it is under way; null where it is kept or cannot be told. */
export const startGainMap: Contract['startGainMap'] = designCase(
  'design.read',
  inputs.gainMap,
  async (context, input) => {
    const asked = await askedFor(context, input.letter);
    if (!asked.ok) return asked;
    const { revision, plan, key } = asked.value;
    if (typeof plan === 'string') return done(null);
    if ((await readGainMap(reader(), key)) !== null) return done(null);
    const job = gainMapJobs().start(nameOf(key), {
      document: revision.document,
      plan,
      asker: context.viewer.userId,
      keep: (cells) => keepGainMap(reader(), key, { plan, cells }, new Date()),
    });
    return job === null ? refused('service.busy') : done({ listen: job.watch });
  },
);

/** Takes back what the viewer asked; the map stops when nobody else waits for it. */
export const stopGainMap: Contract['stopGainMap'] = designCase(
  'design.read',
  inputs.gainMap,
  async (context, input) => {
    const asked = await askedFor(context, input.letter);
    if (!asked.ok) return asked;
    gainMapJobs().stop(nameOf(asked.value.key), context.viewer.userId);
    return done({});
  },
);

/** The map under way; null when there is none, because it is kept, was stopped, or was never asked for. */
export const watchGainMap: Contract['watchGainMap'] = designCase(
  'design.read',
  inputs.gainMap,
  async (context, input) => {
    const asked = await askedFor(context, input.letter);
    if (!asked.ok) return asked;
    const job = gainMapJobs().find(nameOf(asked.value.key));
    return done(job === null ? null : { listen: job.watch });
  },
);

interface Asked {
  readonly revision: KeptRevision;
  /** Or what to enter first. */
  readonly plan: GainMapPlan | string;
  readonly key: GainMapKey;
}

async function askedFor({ design }: DesignContext, letter: string): Promise<Result<Asked>> {
  const revision = await readRevision(reader(), design.designId, letter);
  if (revision === null) return refused('revision.notFound');
  const plan = gainMapPlan(revision.document);
  const request =
    typeof plan === 'string' ? 'none' : `${plan.gains.length} gains, ${plan.loads.length} loads`;
  return done({
    revision,
    plan,
    key: { documentHash: revision.documentHash, method: methodVersion, request },
  });
}

async function stateOf({ plan, key }: Asked): Promise<GainMapState> {
  if (typeof plan === 'string') return { kind: 'lacking', sentence: plan };
  // Asked for first: a map that is finished between the two questions is then found.
  const job = gainMapJobs().find(nameOf(key));
  const map = await readGainMap(reader(), key);
  if (map !== null) return { kind: 'there', ...map };
  if (job === null) return { kind: 'none' };
  const { done: cells, total } = job.progress();
  return { kind: 'running', done: cells, total };
}

function nameOf({ documentHash, method, request }: GainMapKey): string {
  return [documentHash, method, request].join(' ');
}

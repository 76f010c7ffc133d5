// Maps of gains against loads that were simulated once, by what they follow from. No facts: a lost one is made again.
import { z } from 'zod';
import { type GainMapCell, type GainMapPlan, gainVerdictLabels } from '@/lib/assess/gain-map';
import type { Database } from '../database';

export interface GainMapKey {
  readonly documentHash: string;
  readonly method: string;
  readonly request: string;
}

/** A map in full: the cells load by load from the least, each from the least gain. */
export interface KeptGainMap {
  readonly plan: GainMapPlan;
  readonly cells: readonly GainMapCell[];
}

const verdicts = Object.keys(gainVerdictLabels) as (keyof typeof gainVerdictLabels)[];

const kept = z.object({
  plan: z.object({
    gains: z.array(z.number()),
    loads: z.array(z.number()),
    present: z.number(),
    suggested: z.number().nullable(),
  }),
  cells: z.array(
    z.object({
      verdict: z.enum(verdicts),
      overshoot: z.number(),
      settling: z.number().nullable(),
      limitCycle: z.number(),
    }),
  ),
});

export async function readGainMap(db: Database, key: GainMapKey): Promise<KeptGainMap | null> {
  const where = { documentHash_method_request: key };
  const row = await db.gainMap.findUnique({ where, select: { result: true } });
  return row === null ? null : kept.parse(row.result);
}

/** Keeps a map; one that another process kept meanwhile says the same and stays. */
export async function keepGainMap(db: Database, key: GainMapKey, map: KeptGainMap, at: Date): Promise<void> {
  const result = JSON.stringify(kept.parse(map));
  await db.$executeRaw`
    INSERT INTO gain_map (document_hash, method, request, result, made_at)
    VALUES (${key.documentHash}, ${key.method}, ${key.request}, ${result}::jsonb, ${at})
    ON CONFLICT DO NOTHING`;
}

// Bearings worked alone: the shaft behind stage 1 of the two-stage actuator, with reactions written down.
import { bearingsSection } from '@/lib/assess/sections/bearings/bearings';
import type { DutyWork } from '@/lib/assess/sections/duty';
import type { ShaftReactions } from '@/lib/assess/work';
import { readSI } from '@/lib/design/read';
import {
  type Judged,
  judged,
  type Parts,
  steelShaft,
  traced,
  trainOf,
  withParts,
  workOf,
} from '../hubs/joined';

export const shaftAt = 'train.stages.k1.shaft';
export const ball608 = { kind: 'ball', number: '608', seat: 'metal' } as const;

/** Shocks of 1.25 make 400 N of 320 N; the shaft turns three times for one turn of the output. */
export const carried = { radialA: 320, radialB: 160, axial: 0, speed: 6, turns: 3, moves: 20000 };

export function bearings(parts: Parts, loads: Partial<typeof carried> = {}, surroundings?: number): Judged {
  const document = withParts({
    [shaftAt]: { ...steelShaft, bearingA: ball608, bearingB: ball608 },
    ...parts,
  });
  const work = workOf(document);
  const design = readSI(document);
  const g = { ...carried, ...loads };
  const reactions: ShaftReactions = {
    at: shaftAt,
    place: 'Shaft behind stage 1',
    shaft: design.train.stages[0]?.shaft ?? { kind: 'unnamed' },
    radialA: traced(g.radialA),
    radialB: traced(g.radialB),
    axial: traced(g.axial),
    speed: traced(g.speed),
    turns: traced(g.turns),
  };
  const duty: DutyWork = {
    moves: traced(g.moves),
    share: traced(0.4),
    peakPower: traced(1),
    inertia: traced(1),
  };
  bearingsSection(work, duty, trainOf(document, surroundings), [reactions]);
  return judged(work);
}

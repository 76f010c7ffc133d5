// Shafts worked alone: the two-stage actuator with forces and torques of its meshes written down, not worked from teeth.
import { dutySection } from '@/lib/assess/sections/duty';
import { shaftsSection } from '@/lib/assess/sections/shafts/shafts';
import type { MemberForces, ShaftReactions, StageLoads } from '@/lib/assess/work';
import type { Design } from '@/lib/design/document';
import { type Judged, judged, traced, trainOf, workOf } from '../hubs/joined';

/** Forces of one end of a stage in N, and the diameter at which they act, m. */
export interface EndForces {
  readonly tangential: number;
  readonly radial: number;
  readonly axial?: number;
  readonly diameter: number;
  readonly side?: 1 | -1;
}

export interface StageForces {
  readonly input: EndForces | string;
  readonly output: EndForces | string;
  /** Torque of the shaft behind the stage, N m; that of the fixture where it is left out. */
  readonly torque?: number;
}

export interface Alone extends Judged {
  readonly reactions: readonly ShaftReactions[];
}

export function shafts(document: Design, forces: readonly StageForces[], change = same): Alone {
  const work = workOf(document);
  const train = trainOf(document);
  const stages = train.stages.map((stage, i) => {
    const { input, output, torque } = forces[i] ?? { input: 'not told', output: 'not told' };
    return change({
      ...stage,
      input: { ...stage.input, forces: forcesOf(input) },
      output: {
        ...stage.output,
        forces: forcesOf(output),
        torquePeak: torque === undefined ? stage.output.torquePeak : traced(torque),
      },
    });
  });
  const reactions = shaftsSection(work, dutySection(work), { ...train, stages });
  return { ...judged(work), reactions };
}

const same = (stage: StageLoads): StageLoads => stage;

function forcesOf(f: EndForces | string): MemberForces | string {
  if (typeof f === 'string') return f;
  return {
    tangential: traced(f.tangential),
    radial: traced(f.radial),
    axial: traced(f.axial ?? 0),
    diameter: traced(f.diameter),
    side: f.side ?? 1,
  };
}

/** The size of a reaction, which must be known. */
export function size(reaction: ShaftReactions['radialA']): number {
  if (typeof reaction === 'string') throw new Error(reaction);
  return reaction.value;
}

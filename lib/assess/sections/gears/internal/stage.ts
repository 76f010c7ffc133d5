// A stage of a pinion inside a ring gear: both turn the same way.
import { meshPowerLoss } from '@/lib/calc/gears/efficiency';
import { towardsEachOther } from '@/lib/calc/gears/forces';
import type { PairStage } from '@/lib/design/parts/stage';
import type { Read, Traced } from '@/lib/quantity/traced';
import type { MemberLoad, StageLoads, Work } from '../../../work';
import { add, forcesOf, loadFigures, type MeshForces } from '../figures';
import { judgeMesh } from '../pair/judge';
import { backlashOf, meshStiffnessOf } from '../pair/play';
import type { Side } from '../pair/stage';
import { boreOf } from '../pair/work';
import { type Friction, frictionOf } from '../service/friction';
import { type StageLoad, stageLoad } from '../service/loads';
import { gearMaterial } from '../service/materials';
import type { StageCall, StageWork } from '../stage-work';
import { slidingFigures } from '../strength/sliding';
import { internalFigures } from './fouling';
import { type InternalGeometry, internalGeometry } from './geometry';

type InternalStage = Extract<Read<PairStage>, { readonly kind: 'internal' }>;

export function workInternal(call: StageCall<InternalStage>): StageWork {
  const { work, at, place, stage, behind, duty } = call;
  const called = {
    pair: place,
    gears: {
      pinion: { at: `${at}.pinion`, words: 'pinion' },
      wheel: { at: `${at}.wheel`, words: 'ring' },
    },
  };
  const geometry = internalGeometry(work, { at, place, stage: { ...stage, kind: 'helical' }, called });
  const materials = {
    pinion: gearMaterial(work.book, stage.pinion),
    wheel: gearMaterial(work.book, stage.wheel),
  };
  const friction = frictionOf(work, geometry, materials.pinion, materials.wheel);
  const known = typeof friction === 'string' ? null : friction;
  const { load, next } = stageLoad(work, geometry, behind, duty, known);
  const forces = forcesOf(work, geometry, load);
  return {
    at,
    place,
    ratio: geometry.u,
    efficiency: typeof friction === 'string' ? friction : friction.efficiency,
    heat:
      typeof friction === 'string'
        ? friction
        : work.sheet.work('gears', at, meshPowerLoss, {
            P: load.power,
            mu: friction.mu,
            H_V: friction.lossDegree,
          }),
    before: next,
    loads: loadsOf(call, geometry, load, forces, known),
    judge: (surroundings) => {
      add(work, at, place, [['ratio', 'ratio', 'u', '1', geometry.u]]);
      internalFigures(work, geometry, place);
      pinionFigures(work, geometry);
      slidingFigures(work, geometry);
      loadFigures(work, geometry, load, forces, friction);
      const gears = {
        pinion: { ...boreOf(stage.inputHub), internal: true, name: `${place} pinion` },
        wheel: { ring: true, internal: true, name: `${place} ring` },
      } as const;
      judgeMesh(work, { geometry, materials, load, friction, gears }, surroundings, duty);
    },
  };
}

function pinionFigures(work: Work, { place, pinion, missing }: InternalGeometry): void {
  add(work, pinion.at, `${place} ${pinion.name}`, [
    ['tipDiameter', 'tip diameter', 'd_a', 'mm', pinion.tip, missing],
    ['tipThickness', 'thickness of the crest', 's_an', 'mm', pinion.crest, pinion.missing ?? missing, 'more'],
    [
      'undercutMargin',
      'profile shift beyond the undercut limit',
      'Δx',
      '1',
      pinion.undercutMargin,
      null,
      'more',
    ],
  ]);
}

function loadsOf(
  call: StageCall<InternalStage>,
  g: InternalGeometry,
  load: StageLoad,
  forces: MeshForces,
  friction: Friction | null,
): StageLoads {
  const { at, place, stage, work } = call;
  // The ring presses the pinion towards its own centre, which lies on the side of the ring’s axis.
  const radial: Traced = work.sheet.work('gears', at, towardsEachOther, { F: forces.radial });
  const end = (side: Side): MemberLoad => ({
    torquePeak: load[side].torquePeak,
    torqueHold: load[side].torqueHold,
    speed: load[side].speed,
    turns: load[side].turns,
    material: stage[side].material,
    forces: g.missing ?? {
      ...forces,
      radial,
      diameter: g[side].reference,
      side: side === 'pinion' ? -1 : 1,
    },
  });
  return {
    at,
    place,
    stage,
    ratio: g.u,
    efficiency: friction?.efficiency ?? null,
    after: load.after,
    input: end('pinion'),
    output: end('wheel'),
    flips: false,
    crossed: false,
    planet: null,
    meshStiffness: meshStiffnessOf(work, g),
    backlash: backlashOf(work, g),
  };
}

// A stage of two external gears: geometry, loads, temperature and strength.
import { meshPowerLoss } from '@/lib/calc/gears/efficiency';
import type { PairStage } from '@/lib/design/parts/stage';
import type { Read, Traced } from '@/lib/quantity/traced';
import type { MemberLoad, StageLoads } from '../../../work';
import { forcesOf, geometryFigures, loadFigures, type MeshForces } from '../figures';
import { type Friction, frictionOf } from '../service/friction';
import { type StageLoad, stageLoad } from '../service/loads';
import { gearMaterial } from '../service/materials';
import type { StageCall, StageWork } from '../stage-work';
import type { GearCase } from '../strength/gear-case';
import { slidingFigures } from '../strength/sliding';
import { type StageGeometry, stageGeometry } from './geometry';
import { judgeMesh } from './judge';
import { backlashOf, meshStiffnessOf } from './play';
import type { PairSI, Side } from './stage';
import { warmPlay } from './warm-play';

type ExternalPair = Extract<Read<PairStage>, { readonly kind: PairSI['kind'] }>;

export function workPair(call: StageCall<ExternalPair>): StageWork {
  const { work, at, place, stage, behind, duty } = call;
  const geometry = stageGeometry(work, { at, place, stage });
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
    heat: typeof friction === 'string' ? friction : heatOf(call, load, friction),
    before: next,
    loads: loadsOf(call, geometry, load, forces, known),
    judge: (surroundings) => {
      geometryFigures(work, geometry);
      slidingFigures(work, geometry);
      warmPlay(work, geometry, surroundings);
      loadFigures(work, geometry, load, forces, friction);
      const gears = { pinion: boreOf(stage.inputHub), wheel: boreOf(stage.outputHub) };
      judgeMesh(work, { geometry, materials, load, friction, gears }, surroundings, duty);
    },
  };
}

/** The hole in a gear's body as its hub tells it; a gear of one piece with its shaft has none. */
export function boreOf(hub: ExternalPair['inputHub']): Pick<GearCase, 'bore'> {
  if (hub.kind === 'integral') return {};
  return { bore: 'diameter' in hub ? hub.diameter : null };
}

function heatOf({ work, at }: StageCall<ExternalPair>, load: StageLoad, friction: Friction): Traced {
  return work.sheet.work('gears', at, meshPowerLoss, {
    P: load.power,
    mu: friction.mu,
    H_V: friction.lossDegree,
  });
}

function loadsOf(
  call: StageCall<ExternalPair>,
  g: StageGeometry,
  load: StageLoad,
  forces: MeshForces,
  friction: Friction | null,
): StageLoads {
  const { at, place, stage, work } = call;
  const end = (side: Side): MemberLoad => ({
    torquePeak: load[side].torquePeak,
    torqueHold: load[side].torqueHold,
    speed: load[side].speed,
    turns: load[side].turns,
    material: stage[side].material,
    forces: g.missing ?? { diameter: g[side].reference, side: 1, ...forces },
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
    flips: true,
    crossed: false,
    planet: null,
    meshStiffness: meshStiffnessOf(work, g),
    backlash: backlashOf(work, g),
  };
}

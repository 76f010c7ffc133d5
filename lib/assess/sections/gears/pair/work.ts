// A stage of two external gears: geometry, loads, temperature and strength.
import { meshPowerLoss } from '@/lib/calc/gears/efficiency';
import type { PairStage } from '@/lib/design/parts/stage';
import type { Read, Traced } from '@/lib/quantity/traced';
import type { MemberLoad, StageLoads } from '../../../work';
import { forcesOf, geometryFigures, loadFigures, type MeshForces, temperatureFigures } from '../figures';
import type { StageCall, StageWork } from '../kinds';
import { type Friction, frictionOf } from '../service/friction';
import { type StageLoad, stageLoad } from '../service/loads';
import { gearMaterial } from '../service/materials';
import { retentionAt, toothTemperature } from '../service/temperature';
import { flankCheck, flankPressureOf } from '../strength/flank';
import { deflectionCheck, temperatureCheck, wearCheck } from '../strength/plastics';
import { rootChecks } from '../strength/root';
import { type GearCase, rootMeshFactors } from '../strength/root-stress';
import { type StageGeometry, stageGeometry } from './geometry';
import { backlashOf, meshStiffnessOf } from './play';
import { type PairSI, type Side, sides } from './stage';

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
      loadFigures(work, geometry, load, forces, friction);
      const pressure = flankPressureOf(work, geometry, load, materials.pinion, materials.wheel);
      const shares = rootMeshFactors(work, geometry);
      const cases: GearCase[] = [];
      for (const side of sides) {
        const material = materials[side];
        const mate = materials[side === 'pinion' ? 'wheel' : 'pinion'];
        const gearAt = `${at}.${side}`;
        const teeth = toothTemperature(
          work,
          geometry,
          side,
          material,
          mate,
          load,
          friction,
          surroundings,
          duty,
        );
        temperatureFigures(work, geometry, side, teeth);
        const atRoot = retentionAt(
          work,
          gearAt,
          material,
          typeof teeth === 'string' ? teeth : teeth.root,
          'f_T.root',
        );
        const flank = typeof teeth === 'string' ? teeth : teeth.flank;
        const atFlank = retentionAt(work, gearAt, material, flank, 'f_T.flank');
        const gearCase: GearCase = { geometry, side, material, mate, load, shares, atRoot, atFlank };
        cases.push(gearCase);
        rootChecks(work, gearCase);
        flankCheck(work, gearCase, pressure);
        temperatureCheck(work, gearCase, flank);
        wearCheck(work, gearCase, friction);
      }
      const [pinion, wheel] = cases;
      if (pinion !== undefined && wheel !== undefined)
        deflectionCheck(work, geometry, load, { pinion, wheel });
    },
  };
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
    forces: g.missing ?? { ...forces, diameter: g[side].reference, side: 1 },
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

// A worm stage: axes crossed at a right angle, forces on both shafts, and whether it holds by itself.
import { pinionTorque, pitchLineVelocity, shaftPower } from '@/lib/calc/gears/forces';
import { pinionSpeed, turnsPerOutputTurn } from '@/lib/calc/gears/service/duty';
import { wormAxialForce, wormRadialForce, wormTangentialForce } from '@/lib/calc/gears/worm/efficiency';
import { stagePowerLoss } from '@/lib/calc/gears/worm/strength';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../../sheet';
import type { MemberForces, MemberLoad } from '../../../work';
import type { GearGeometry } from '../pair/gear';
import type { StageGeometry } from '../pair/geometry';
import type { Side } from '../pair/stage';
import { assumedEfficiency } from '../service/friction';
import { gearLoad, type Shaft, type StageLoad } from '../service/loads';
import { gearMaterial } from '../service/materials';
import type { StageCall, StageWork } from '../stage-work';
import { wormFigures } from './figures';
import { lockingOf, slidingOf, type WormFriction, wormFrictionOf } from './friction';
import { type WormGeometry, type WormSI, wormGeometry } from './geometry';
import { judgeWorm } from './teeth';
import { wormWearCheck } from './wear';

export function workWorm(call: StageCall<WormSI>): StageWork {
  const { work, at, place, stage, behind, duty } = call;
  const { sheet } = work;
  const worm = wormGeometry(work, at, stage);
  const geometry = asPair(call, worm);
  const materials = {
    pinion: gearMaterial(work.book, geometry.stage.pinion),
    wheel: gearMaterial(work.book, stage.wormWheel),
  };
  const u = worm.ratio;
  const speed = sheet.work('gears', at, pinionSpeed, { omega_2: behind.speed, u });
  const sliding = slidingOf(work, at, speed, worm);
  const friction = wormFrictionOf(work, at, stage, worm, sliding, materials.pinion, materials.wheel);
  const known = typeof friction !== 'string';
  const eta = known ? friction.efficiency : assumedEfficiency;
  const torque = (T_2: Traced, as: string) => sheet.work('gears', at, pinionTorque, { T_2, u, eta }, as);
  const before: Shaft = {
    peak: torque(behind.peak, 'T_1.peak'),
    hold: torque(behind.hold, 'T_1.hold'),
    speed,
    turns: sheet.work('gears', at, turnsPerOutputTurn, { i_after: behind.turns, u }),
  };
  const load = loadOf(call, worm, before);
  const forces = forcesOf(call, worm, load, friction);
  const end = (side: Side, { peak, hold, speed: omega, turns }: Shaft): MemberLoad => ({
    torquePeak: peak,
    torqueHold: hold,
    speed: omega,
    turns,
    material: side === 'pinion' ? stage.wormMaterial : stage.wormWheel.material,
    forces: typeof forces === 'string' ? forces : forces[side],
  });
  return {
    at,
    place,
    ratio: u,
    efficiency: known ? friction.efficiency : friction,
    heat: known ? sheet.work('gears', at, stagePowerLoss, { P: load.power, eta: friction.teeth }) : friction,
    before,
    loads: {
      at,
      place,
      stage,
      ratio: u,
      efficiency: known ? friction.efficiency : null,
      after: behind.turns,
      input: end('pinion', before),
      output: end('wheel', behind),
      flips: false,
      crossed: true,
      planet: null,
      meshStiffness: 'The stiffness of a worm mesh is not worked: nothing simple is published for it.',
      backlash: 'the play of a worm pair is not worked; measure it at the output.',
    },
    judge: (surroundings) => {
      const locking = lockingOf(work, at, stage, worm);
      wormFigures(call, { worm, sliding, friction, locking, forces, before });
      judgeWorm(work, { worm, geometry, materials, load, friction }, surroundings, duty);
      const onWheel = typeof forces === 'string' ? forces : forces.wheel;
      wormWearCheck(call, worm, onWheel, load.wheel.cycles, materials.pinion, materials.wheel);
    },
  };
}

function loadOf({ work, at, behind, duty }: StageCall<WormSI>, g: WormGeometry, before: Shaft): StageLoad {
  const { sheet } = work;
  const force = (T_2: Traced, as: string) =>
    sheet.work('gears', at, wormAxialForce, { T_2, d_m2: g.wheelDiameter }, as);
  return {
    pinion: gearLoad(work, `${at}.worm`, before, duty),
    wheel: gearLoad(work, `${at}.wormWheel`, behind, duty),
    forcePeak: force(behind.peak, 'F_x1.peak'),
    forceHold: force(behind.hold, 'F_x1.hold'),
    velocity: sheet.work('gears', at, pitchLineVelocity, { omega: behind.speed, d: g.wheelDiameter }),
    power: sheet.work('gears', at, shaftPower, { T: before.peak, omega: before.speed }),
    after: behind.turns,
  };
}

/** What pushes the worm along pushes the wheel round, and the other way about. */
function forcesOf(
  { work, at, stage }: StageCall<WormSI>,
  g: WormGeometry,
  load: StageLoad,
  friction: WormFriction | string,
): Readonly<Record<Side, MemberForces>> | string {
  if (typeof friction === 'string') return friction;
  const { sheet } = work;
  const F_x1 = load.forcePeak;
  const F_t1 = sheet.work('gears', at, wormTangentialForce, {
    F_x1,
    gamma_m: g.lead,
    rho_z: friction.angle,
  });
  const radial = sheet.work('gears', at, wormRadialForce, {
    F_x1,
    alpha_n: stage.pressureAngle,
    gamma_m: g.lead,
    mu: friction.mu,
  });
  if (!(F_t1.value >= 0) || !(radial.value >= 0))
    return 'By its friction and lead this worm would jam: its forces cannot be told.';
  return {
    pinion: { tangential: F_t1, radial, axial: F_x1, diameter: g.wormDiameter, side: 1 },
    wheel: { tangential: F_x1, radial, axial: F_t1, diameter: g.wheelDiameter, side: 1 },
  };
}

/** Worm and wheel as the strength of teeth sees a pair; the worm stands where others have their pinion. */
function asPair({ at, place, stage }: StageCall<WormSI>, g: WormGeometry): StageGeometry {
  const gear = (side: Side, path: string, name: string, d: Traced): GearGeometry => ({
    at: path,
    side,
    name,
    internal: false,
    reference: d,
    base: d,
    root: d,
    tip: null,
    crest: null,
    undercutMargin: null,
    missing: null,
  });
  return {
    at,
    place,
    stage: {
      kind: 'helical',
      module: stage.axialModule,
      pressureAngle: stage.pressureAngle,
      helixAngle: g.lead,
      faceWidth: g.width,
      centreDistance: null,
      centreTolerance: null,
      thinning: null,
      thinningTolerance: null,
      lubrication: stage.lubrication,
      pinion: {
        teeth: stage.starts,
        shift: practice(0, 'a worm has no profile shift'),
        material: stage.wormMaterial,
        // How a printed worm lies is not asked: its thread is taken as bent across the layers, the worse way.
        build: 'upright',
        solidFraction: practice(1, 'a worm is solid'),
        rim: null,
      },
      wheel: stage.wormWheel,
    },
    u: g.ratio,
    flankRatio: g.ratio,
    beta: g.lead,
    alphaT: stage.pressureAngle,
    betaB: g.lead,
    aw: g.a,
    excess: null,
    backlash: null,
    pinion: gear('pinion', `${at}.worm`, 'worm', g.wormDiameter),
    wheel: gear('wheel', `${at}.wormWheel`, 'worm wheel', g.wheelDiameter),
    mesh: null,
    missing: g.missing,
  };
}

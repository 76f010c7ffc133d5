// Torques, speeds and turns of a set's members, and what one planet and one tooth of each mesh carry.
import { pinionTorque, pitchLineVelocity, shaftPower, tangentialForce } from '@/lib/calc/gears/forces';
import {
  forceTorque,
  heldTorque,
  meetingsPerOutputTurn,
  planetPower,
  planetSpin,
  planetTurns,
} from '@/lib/calc/gears/planetary/loads';
import { relativeToCarrier } from '@/lib/calc/gears/planetary/ratios';
import { planetPinForce, sunTorquePerPlanet } from '@/lib/calc/gears/planetary/torques';
import { pinionSpeed, turnsPerOutputTurn } from '@/lib/calc/gears/service/duty';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../../sheet';
import type { StageLoads, Work } from '../../../work';
import type { DutyWork } from '../../duty';
import type { GearGeometry } from '../pair/gear';
import { assumedEfficiency } from '../service/friction';
import { type GearLoad, gearLoad, type Shaft, type StageLoad } from '../service/loads';
import type { StageCall } from '../stage-work';
import type { Meshes } from './meshes';
import { type Central, type Member, type PlanetarySI, roles, type SetEfficiency, type SetRatio } from './set';

export interface MemberState {
  readonly peak: Traced;
  readonly hold: Traced;
  readonly speed: Traced;
  readonly turns: Traced;
}

export interface SetLoads {
  /** The shaft before the set. */
  readonly before: Shaft;
  readonly power: Traced;
  readonly members: Readonly<Record<Member, MemberState>>;
  /** Sum of the tangential forces of all planets on sun or ring at the peak. */
  readonly sumPeak: Traced;
  readonly atSun: StageLoad;
  readonly atRing: StageLoad;
  /** Power that heats the teeth of sun and ring, and of one planet. */
  readonly rolling: Traced;
  readonly planetRolling: Traced;
  /** Null where the set has no centre distance. */
  readonly planet: StageLoads['planet'];
}

const still = practice(0, 'the member is held');

export function loadsOfSet(
  call: StageCall<PlanetarySI>,
  meshes: Meshes,
  i: SetRatio,
  K_gamma: Traced,
  efficiency: SetEfficiency | string,
): SetLoads {
  const { work, at, stage, behind } = call;
  const { sheet } = work;
  const { input } = roles[stage.fixed];
  const before = shaftBefore(call, i, efficiency);
  const members = membersOf(call, i, before);
  const { carrier } = members;
  const N = stage.planets;
  const driver = input === 'sun' ? meshes.sun.pinion : meshes.ring.wheel;
  const force = (T_s: Traced, as: string) => {
    const T = sheet.work('gears', at, sunTorquePerPlanet, { T_s, K_gamma, N }, `T_mesh.${as}`);
    return sheet.work('gears', at, tangentialForce, { T, d: driver.reference }, `F_t.${as}`);
  };
  const forces = { peak: force(before.peak, 'peak'), hold: force(before.hold, 'hold') };
  const omega_mc = sheet.work('gears', at, relativeToCarrier, {
    omega_m: before.speed,
    omega_c: carrier.speed,
  });
  const rolling = sheet.work('gears', at, shaftPower, { T: before.peak, omega: omega_mc }, 'P_roll');
  const teeth = { z_m: stage[input].teeth, z_p: stage.planet.teeth };
  const turns = sheet.work('gears', at, planetTurns, { i_m: before.turns, i_c: carrier.turns, ...teeth });
  const speed = sheet.work('gears', at, planetSpin, { omega_mc, ...teeth });
  const common = {
    forcePeak: forces.peak,
    forceHold: forces.hold,
    velocity: sheet.work('gears', at, pitchLineVelocity, { omega: omega_mc, d: driver.reference }),
    power: rolling,
    after: behind.turns,
  };
  const planet = (gear: GearGeometry) => meshLoad(call, gear, forces, turns, speed);
  const central = (which: Central, gear: GearGeometry) => {
    const meetings = sheet.work('gears', gear.at, meetingsPerOutputTurn, {
      i_m: members[which].turns,
      i_c: carrier.turns,
      N,
    });
    return meshLoad(call, gear, forces, meetings, members[which].speed);
  };
  const a = meshes.sun.mesh?.a ?? meshes.sun.aw;
  return {
    before,
    members,
    power: sheet.work('gears', at, shaftPower, { T: before.peak, omega: before.speed }),
    sumPeak: sheet.work('gears', at, tangentialForce, { T: before.peak, d: driver.reference }, 'F_t.sum'),
    atSun: {
      ...common,
      pinion: central('sun', meshes.sun.pinion),
      wheel: planet(meshes.sun.wheel),
    },
    atRing: {
      ...common,
      pinion: planet(meshes.ring.pinion),
      wheel: central('ring', meshes.ring.wheel),
    },
    rolling,
    planetRolling: sheet.work('gears', at, planetPower, { P: rolling, K_gamma, N }),
    planet:
      a === null
        ? null
        : {
            radial: sheet.work('gears', at, planetPinForce, { T_c: carrier.peak, K_gamma, N, a }),
            speed,
            turns,
          },
  };
}

function shaftBefore(
  { work, at, behind }: StageCall<PlanetarySI>,
  { size: u }: SetRatio,
  efficiency: SetEfficiency | string,
): Shaft {
  const { sheet } = work;
  const eta = typeof efficiency === 'string' ? assumedEfficiency : efficiency.withBearings;
  const torque = (T_2: Traced, as: string) => sheet.work('gears', at, pinionTorque, { T_2, u, eta }, as);
  return {
    peak: torque(behind.peak, 'T_1.peak'),
    hold: torque(behind.hold, 'T_1.hold'),
    speed: sheet.work('gears', at, pinionSpeed, { omega_2: behind.speed, u }),
    turns: sheet.work('gears', at, turnsPerOutputTurn, { i_after: behind.turns, u }),
  };
}

/** Torques, speeds and turns of sun, ring and carrier as sizes. */
function membersOf(
  { work, at, stage, behind }: StageCall<PlanetarySI>,
  { signed: i }: SetRatio,
  before: Shaft,
): Readonly<Record<Member, MemberState>> {
  const { input, output } = roles[stage.fixed];
  const torque = (T_2: Traced, T_1: Traced, as: string) =>
    work.sheet.work('gears', at, heldTorque, { T_2, i, T_1 }, as);
  const held: MemberState = {
    peak: torque(behind.peak, before.peak, 'T_h.peak'),
    hold: torque(behind.hold, before.hold, 'T_h.hold'),
    speed: still,
    turns: still,
  };
  const of = (member: Member) => (member === input ? before : member === output ? behind : held);
  return { sun: of('sun'), ring: of('ring'), carrier: of('carrier') };
}

/** One gear of a mesh: the torque of one planet’s tooth force, the turning that counts, the meetings of a tooth. */
function meshLoad(
  { work, duty }: { readonly work: Work; readonly duty: DutyWork },
  gear: GearGeometry,
  force: { readonly peak: Traced; readonly hold: Traced },
  meetings: Traced,
  speed: Traced,
): GearLoad {
  const torque = (F_t: Traced, as: string) =>
    work.sheet.work('gears', gear.at, forceTorque, { F_t, d: gear.reference }, as);
  const shaft = {
    peak: torque(force.peak, 'T_mesh.peak'),
    hold: torque(force.hold, 'T_mesh.hold'),
    speed,
    turns: meetings,
  };
  return gearLoad(work, gear.at, shaft, duty);
}

// A planetary stage: sun, planets and ring, one of sun, ring and carrier held.
import { axialForce, radialForce, tangentialForce } from '@/lib/calc/gears/forces';
import { pinCircle, unevenForce } from '@/lib/calc/gears/planetary/loads';
import { stagePowerLoss } from '@/lib/calc/gears/worm/strength';
import { bearingSize } from '@/lib/catalog/bearings/sizes';
import type { MaterialKey } from '@/lib/catalog/materials/labels';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../../sheet';
import type { MemberForces, MemberLoad, StageLoads } from '../../../work';
import { judgeMesh } from '../pair/judge';
import { boreOf } from '../pair/work';
import { frictionOf } from '../service/friction';
import { gearMaterial } from '../service/materials';
import type { StageCall, StageWork } from '../stage-work';
import { slidingFigures } from '../strength/sliding';
import { type SetWork, setFigures } from './figures';
import { loadsOfSet } from './loads';
import { meshesOf } from './meshes';
import { setBacklash, setStiffness } from './play';
import { efficiencyOf, type Member, type PlanetarySI, ratioOf, roles, sharingOf } from './set';

export function workPlanetary(call: StageCall<PlanetarySI>): StageWork {
  const { work, at, place, stage, duty } = call;
  const meshes = meshesOf(work, at, place, stage);
  const materials = {
    sun: gearMaterial(work.book, stage.sun),
    planet: gearMaterial(work.book, stage.planet),
    ring: gearMaterial(work.book, stage.ring),
  };
  const atSun = frictionOf(work, meshes.sun, materials.sun, materials.planet);
  const atRing = frictionOf(work, meshes.ring, materials.planet, materials.ring);
  const ratio = ratioOf(work, at, stage);
  const metal = Object.values(materials).every(({ kind }) => kind === 'metal');
  const sharing = sharingOf(work, at, stage, metal);
  const efficiency = efficiencyOf(work, at, stage, atSun, atRing);
  const loads = loadsOfSet(call, meshes, ratio, sharing, efficiency);
  const set: SetWork = { meshes, ratio, sharing, efficiency, loads };
  const { rolling, planetRolling } = loads;
  return {
    at,
    place,
    ratio: ratio.size,
    efficiency: typeof efficiency === 'string' ? efficiency : efficiency.withBearings,
    heat:
      typeof efficiency === 'string'
        ? efficiency
        : work.sheet.work('gears', at, stagePowerLoss, { P: loads.power, eta: efficiency.teeth }),
    before: loads.before,
    loads: handedOn(call, set),
    judge: (surroundings) => {
      setFigures(call, set);
      slidingFigures(work, meshes.sun);
      slidingFigures(work, meshes.ring);
      const bore = planetBore(stage);
      const sunHub = roles[stage.fixed].input === 'sun' ? boreOf(stage.inputHub) : { bore: null };
      judgeMesh(
        work,
        {
          geometry: meshes.sun,
          materials: { pinion: materials.sun, wheel: materials.planet },
          load: loads.atSun,
          friction: atSun,
          power: { pinion: rolling, wheel: planetRolling },
          gears: { pinion: sunHub, wheel: { idler: true, bore } },
        },
        surroundings,
        duty,
      );
      judgeMesh(
        work,
        {
          geometry: meshes.ring,
          materials: { pinion: materials.planet, wheel: materials.ring },
          load: loads.atRing,
          friction: atRing,
          power: { pinion: planetRolling, wheel: rolling },
          gears: {
            pinion: { idler: true, internal: true, bore },
            wheel: { ring: true, internal: true },
          },
        },
        surroundings,
        duty,
      );
    },
  };
}

/** The hole in a planet’s body: the outside of its bearing; null where that is not entered. */
function planetBore({ planetBearing: b }: PlanetarySI): Traced | null {
  if (b.kind === 'data') return b.outer;
  if (b.kind !== 'ball' || b.number === null) return null;
  const row = bearingSize(b.number);
  return row === undefined ? null : practice(row.D / 1000, `outside of bearing ${b.number}, ISO 15`);
}

function handedOn(call: StageCall<PlanetarySI>, set: SetWork): StageLoads {
  const { work, at, place, stage, behind } = call;
  const { meshes, ratio, efficiency, loads } = set;
  const { input, output, flips } = roles[stage.fixed];
  const end = (member: Member): MemberLoad => {
    const { peak, hold, speed, turns } = loads.members[member];
    return {
      torquePeak: peak,
      torqueHold: hold,
      speed,
      turns,
      material: materialOf(stage, member),
      forces: forcesOn(call, set, member),
    };
  };
  return {
    at,
    place,
    stage,
    ratio: ratio.size,
    efficiency: typeof efficiency === 'string' ? null : efficiency.withBearings,
    after: behind.turns,
    input: end(input),
    output: end(output),
    flips,
    crossed: false,
    planet: loads.planet,
    meshStiffness: setStiffness(work, at, stage, meshes),
    backlash: setBacklash(work, at, stage, meshes),
  };
}

function materialOf(stage: PlanetarySI, member: Member): MaterialKey | null {
  return member === 'carrier' ? stage.carrierMaterial : stage[member].material;
}

const balanced = practice(0, 'sun and ring push the planets against each other along the axis');

/** What planets that share unevenly leave on a member; a set that shares evenly loads its shafts with torque alone. */
function forcesOn(call: StageCall<PlanetarySI>, set: SetWork, member: Member): MemberForces | string {
  const { work, at, stage } = call;
  const { meshes, loads, sharing: K_gamma } = set;
  const { sheet } = work;
  const missing = meshes.sun.missing ?? meshes.ring.missing;
  if (missing !== null) return missing;
  const N = stage.planets;
  const own = `${at}.${member}`;
  const left = (F_sum: Traced) =>
    N.value < 2 ? F_sum : sheet.work('gears', own, unevenForce, { F_sum, K_gamma, N });
  if (member === 'carrier') {
    const a = meshes.sun.mesh?.a;
    if (a === undefined) return 'The set has no centre distance.';
    const d = sheet.work('gears', own, pinCircle, { a });
    const F_sum = sheet.work('gears', own, tangentialForce, { T: loads.members.carrier.peak, d }, 'F_t.sum');
    return { tangential: left(F_sum), radial: noRadial, axial: balanced, diameter: d, side: 1 };
  }
  const tangential = left(loads.sumPeak);
  const { beta } = meshes.sun;
  const gear = member === 'sun' ? meshes.sun.pinion : meshes.ring.wheel;
  return {
    tangential,
    radial: sheet.work('gears', own, radialForce, { F_t: tangential, alpha_n: stage.pressureAngle, beta }),
    axial: sheet.work('gears', own, axialForce, { F_t: loads.sumPeak, beta }),
    diameter: gear.reference,
    side: 1,
  };
}

const noRadial = practice(0, 'the pins push along their circle; the radial parts of sun and ring cancel');

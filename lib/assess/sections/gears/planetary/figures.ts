// The figures of a planetary set: whether it goes together, how it shares the load, what its members do.
import { axialForce, radialForce } from '@/lib/calc/gears/forces';
import { assemblyQuotient, planetClearance } from '@/lib/calc/gears/planetary/arrangement';
import type { Traced } from '@/lib/quantity/traced';
import type { Work } from '../../../work';
import { lifeMissing } from '../../duty';
import { add, gearFigures, meshFigures } from '../figures';
import { internalFigures } from '../internal/fouling';
import { sides } from '../pair/stage';
import type { StageCall } from '../stage-work';
import type { SetLoads } from './loads';
import type { Meshes } from './meshes';
import type { Member, PlanetarySI, SetEfficiency, SetRatio } from './set';

export interface SetWork {
  readonly meshes: Meshes;
  readonly ratio: SetRatio;
  readonly sharing: Traced;
  readonly efficiency: SetEfficiency | string;
  readonly loads: SetLoads;
}

export function setFigures(call: StageCall<PlanetarySI>, set: SetWork): void {
  const { work, at, place } = call;
  const { meshes, loads } = set;
  wholeFigures(call, set);
  meshFigures(work, meshes.sun, `${place} sun and planet`);
  for (const side of sides) gearFigures(work, meshes.sun, side);
  internalFigures(work, meshes.ring, `${place} planet and ring`);
  for (const [mesh, load, words] of [
    [meshes.sun, loads.atSun, 'sun and planet'],
    [meshes.ring, loads.atRing, 'planet and ring'],
  ] as const) {
    const radial = work.sheet.work('gears', mesh.at, radialForce, {
      F_t: load.forcePeak,
      alpha_n: mesh.stage.pressureAngle,
      beta: mesh.beta,
    });
    add(work, mesh.at, `${place} ${words}`, [
      [
        'tangentialForce',
        'tangential force of one planet at the peak',
        'F_t',
        'N',
        load.forcePeak,
        null,
        'less',
      ],
      ['radialForce', 'radial force of one planet at the peak', 'F_r', 'N', radial, null, 'less'],
      ['pitchLineVelocity', 'pitch-line velocity past the carrier', 'v', 'm/s', load.velocity],
    ]);
  }
  memberFigures(call, loads, 'sun', loads.atSun.pinion.cycles);
  memberFigures(call, loads, 'ring', loads.atRing.wheel.cycles);
  memberFigures(call, loads, 'carrier');
  add(work, `${at}.planet`, `${place} planet`, [
    ['speed', 'speed on its pin', 'n', 'rpm', loads.planet?.speed ?? null, meshes.sun.missing],
    ['cycles', 'load cycles of a tooth on each flank', 'N_L', '1', loads.atSun.wheel.cycles, lifeMissing],
  ]);
}

function wholeFigures({ work, at, place, stage }: StageCall<PlanetarySI>, set: SetWork): void {
  const { meshes, ratio, sharing, efficiency, loads } = set;
  const { sheet } = work;
  const N = stage.planets;
  const teeth = { z_s: stage.sun.teeth, z_r: stage.ring.teeth };
  const known = typeof efficiency !== 'string';
  add(work, at, place, [
    ['ratio', 'ratio', 'i', '1', ratio.size],
    [
      'assembly',
      'teeth of sun and ring for each planet',
      'q_N',
      '1',
      sheet.work('gears', at, assemblyQuotient, { ...teeth, N }),
    ],
    [
      'planetClearance',
      'gap between neighbouring planets',
      'c_p',
      'mm',
      gapOf(work, at, stage, meshes),
      gapMissing(stage, meshes),
      'more',
    ],
    ['loadSharing', 'load of the most loaded planet over an even share', 'K_γ', '1', sharing, null, 'less'],
    [
      'efficiency',
      'efficiency with bearings',
      'η',
      '%',
      known ? efficiency.withBearings : null,
      known ? null : efficiency,
      'more',
    ],
    [
      'axialForce',
      'axial force of sun and ring at the peak',
      'F_a',
      'N',
      sheet.work('gears', at, axialForce, { F_t: loads.sumPeak, beta: meshes.sun.beta }),
      null,
      'less',
    ],
    [
      'pinForce',
      'force on the pin of a planet at the peak',
      'F_pin',
      'N',
      loads.planet?.radial ?? null,
      meshes.sun.missing,
      'less',
    ],
  ]);
}

function gapOf(work: Work, at: string, { planets: N }: PlanetarySI, { sun }: Meshes): Traced | null {
  const a = sun.mesh?.a ?? sun.aw;
  const d_ap = sun.wheel.tip;
  if (a === null || d_ap === null || N.value < 2) return null;
  return work.sheet.work('gears', at, planetClearance, { a, N, d_ap });
}

function gapMissing({ planets }: PlanetarySI, { sun }: Meshes): string | null {
  return planets.value < 2 ? 'A single planet has no neighbour.' : sun.missing;
}

function memberFigures(
  { work, at, place }: StageCall<PlanetarySI>,
  { members }: SetLoads,
  member: Member,
  cycles?: Traced | null,
): void {
  const { peak, speed } = members[member];
  add(work, `${at}.${member}`, `${place} ${member}`, [
    ['torque', 'torque at the peak', 'T', 'N m', peak, null, 'less'],
    ['speed', 'speed', 'n', 'rpm', speed],
  ]);
  if (cycles === undefined) return;
  add(work, `${at}.${member}`, `${place} ${member}`, [
    ['cycles', 'load cycles of a tooth', 'N_L', '1', cycles, lifeMissing],
  ]);
}

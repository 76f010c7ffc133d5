// The figures of a stage: what a reviewer compares between two revisions.

import { axialForce, axialForcePerHalf, radialForce } from '@/lib/calc/gears/forces';
import { tipClearance } from '@/lib/calc/gears/geometry/diameters';
import type { Traced } from '@/lib/quantity/traced';
import type { UnitKey } from '@/lib/quantity/units';
import type { Direction } from '../../assessment';
import { practice } from '../../sheet';
import { addFigure, type MemberForces, type Work } from '../../work';
import { lifeMissing } from '../duty';
import type { StageGeometry } from './pair/geometry';
import { type Side, sides } from './pair/stage';
import type { Friction } from './service/friction';
import type { StageLoad } from './service/loads';

export type Row = readonly [
  name: string,
  label: string,
  symbol: string,
  unit: UnitKey,
  value: Traced | null,
  missing?: string | null,
  better?: Direction,
];

export function add(work: Work, at: string, place: string, rows: readonly Row[]): void {
  for (const [name, label, symbol, unit, value, missing, better] of rows) {
    addFigure(work, {
      key: `${at}.${name}`,
      section: 'gears',
      label: `${place}, ${label}`,
      symbol,
      unit,
      value,
      missing: missing ?? null,
      better: better ?? 'neither',
    });
  }
}

const noGiven = 'Enter the centre distance that the case holds.';

export function geometryFigures(work: Work, g: StageGeometry): void {
  add(work, g.at, g.place, [['ratio', 'ratio', 'u', '1', g.u]]);
  meshFigures(work, g, g.place);
  for (const side of sides) gearFigures(work, g, side);
}

/** Figures of one external mesh, `pair` being what it is called. */
export function meshFigures(work: Work, g: StageGeometry, pair: string): void {
  const { mesh, missing } = g;
  add(work, g.at, pair, [
    ['backlashFreeDistance', 'centre distance without backlash', 'a_w', 'mm', g.aw, missing],
    [
      'centreDistanceExcess',
      'centre distance beyond it',
      'Δa',
      'mm',
      g.excess,
      g.aw === null ? missing : noGiven,
    ],
    [
      'backlash',
      'backlash on the pitch circle',
      'j_wt',
      'mm',
      g.backlash,
      g.aw === null ? missing : noGiven,
      'less',
    ],
    ['workingPressureAngle', 'working pressure angle', 'α_wt', 'deg', mesh?.alphaWt ?? null, missing],
    ['contactRatio', 'contact ratio', 'ε_α', '1', mesh?.contactRatio ?? null, missing, 'more'],
    ['overlapRatio', 'overlap ratio', 'ε_β', '1', mesh?.overlap ?? null, missing, 'more'],
  ]);
}

export function gearFigures(work: Work, g: StageGeometry, side: Side): void {
  const gear = g[side];
  const mate = side === 'pinion' ? g.wheel : g.pinion;
  const missing = gear.missing ?? g.missing;
  const clearance =
    g.mesh === null || gear.tip === null
      ? null
      : work.sheet.work('gears', gear.at, tipClearance, { a: g.mesh.a, d_a: gear.tip, d_f_mate: mate.root });
  add(work, gear.at, `${g.place} ${gear.name}`, [
    ['tipDiameter', 'tip diameter', 'd_a', 'mm', gear.tip, missing],
    ['tipThickness', 'thickness of the crest', 's_an', 'mm', gear.crest, missing, 'more'],
    [
      'undercutMargin',
      'profile shift beyond the undercut limit',
      'Δx',
      '1',
      gear.undercutMargin,
      null,
      'more',
    ],
    ['tipClearance', 'clearance of its tip in the mate’s root', 'c', 'mm', clearance, g.missing, 'more'],
    [
      'profileStart',
      'radius of curvature where contact begins',
      'ρ_Nf',
      'mm',
      g.mesh?.start[side] ?? null,
      g.missing,
      'more',
    ],
  ]);
}

export function loadFigures(
  work: Work,
  g: StageGeometry,
  load: StageLoad,
  forces: MeshForces,
  friction: Friction | string,
): void {
  const { tangential: F_t, radial, axial } = forces;
  const known = typeof friction !== 'string';
  const missing = known ? null : friction;
  add(work, g.at, g.place, [
    ['tangentialForce', 'tangential force at the peak', 'F_t', 'N', F_t, null, 'less'],
    ['radialForce', 'radial force at the peak', 'F_r', 'N', radial, null, 'less'],
    ['axialForce', 'axial force on the shafts at the peak', 'F_a', 'N', axial, null, 'less'],
    ['pitchLineVelocity', 'pitch-line velocity', 'v', 'm/s', load.velocity],
    ['efficiency', 'efficiency with bearings', 'η', '%', known ? friction.efficiency : null, missing, 'more'],
  ]);
  for (const side of sides) {
    const { torquePeak, speed, cycles } = load[side];
    add(work, g[side].at, `${g.place} ${g[side].name}`, [
      ['torque', 'torque at the peak', 'T', 'N m', torquePeak, null, 'less'],
      ['speed', 'speed', 'n', 'rpm', speed],
      ['cycles', 'load cycles of a tooth', 'N_L', '1', cycles, lifeMissing],
    ]);
  }
}

export type MeshForces = Pick<MemberForces, 'tangential' | 'radial' | 'axial'>;

/** Forces of the mesh on each of its gears at the peak, without shocks. */
export function forcesOf(work: Work, g: StageGeometry, load: StageLoad): MeshForces {
  const F_t = load.forcePeak;
  const radial = work.sheet.work('gears', g.at, radialForce, {
    F_t,
    alpha_n: g.stage.pressureAngle,
    beta: g.beta,
  });
  return { tangential: F_t, radial, axial: thrust(work, g, F_t) };
}

const balanced = practice(0, 'the halves of a double-helical gear push against each other');

/** On the shafts; the halves of a double-helical gear balance, and the force inside one is worked on the sheet. */
function thrust(work: Work, g: StageGeometry, F_t: Traced): Traced {
  if (g.stage.kind !== 'doubleHelical')
    return work.sheet.work('gears', g.at, axialForce, { F_t, beta: g.beta });
  work.sheet.work('gears', g.at, axialForcePerHalf, { F_t, beta: g.beta });
  return balanced;
}

export function temperatureFigures(
  work: Work,
  g: StageGeometry,
  side: Side,
  teeth: { readonly root: Traced; readonly flank: Traced } | string,
): void {
  const known = typeof teeth !== 'string';
  const missing = known ? null : teeth;
  add(work, g[side].at, `${g.place} ${g[side].name}`, [
    [
      'rootTemperature',
      'temperature of the tooth root',
      'θ_F',
      'degC',
      known ? teeth.root : null,
      missing,
      'less',
    ],
    [
      'flankTemperature',
      'temperature of the flank',
      'θ_H',
      'degC',
      known ? teeth.flank : null,
      missing,
      'less',
    ],
  ]);
}

// Play and stiffness of one mesh of two gears, external or internal, as its stage hands them on.
import { centreAtLimit, thinnedBacklash } from '@/lib/calc/gears/backlash/limits';
import { angularBacklash, internalBacklashFromCentreDistance } from '@/lib/calc/gears/backlash/mesh';
import {
  meshStiffness,
  meshTorsionalStiffness,
  rackStiffnessFactor,
  singleStiffness,
  stiffnessByModulus,
  toothCompliance,
} from '@/lib/calc/gears/backlash/mesh-stiffness';
import { workingAngleFromCentreDistance } from '@/lib/calc/gears/geometry/pair';
import { virtualToothNumber } from '@/lib/calc/gears/geometry/tooth-count';
import { workingModulus } from '@/lib/calc/gears/service/allowable';
import { backlashFromCentreDistance, usableFaceWidth } from '@/lib/calc/gears/service/mesh';
import { metalTeeth } from '@/lib/catalog/gear-steels';
import { ruleValue } from '@/lib/catalog/materials/rules';
import type { Traced } from '@/lib/quantity/traced';
import { cited, practice } from '../../../sheet';
import { type Backlash, finite, type Work } from '../../../work';
import { catalogued, gearMaterial, lacking } from '../service/materials';
import type { Mesh, StageGeometry } from './geometry';
import { rack, type Side } from './stage';

/** Torsional stiffness on the wheel, N m/rad, or why it is not known. */
export function meshStiffnessOf(work: Work, g: StageGeometry): Traced | string {
  const line = lineStiffnessOf(work, g);
  if (typeof line === 'string') return line;
  const b = widthOf(work, g);
  if (typeof b === 'string') return b;
  return work.sheet.work('gears', g.at, meshTorsionalStiffness, { c_gamma: line, b, d_b: g.wheel.base });
}

const unit = practice(1e-9, '1 mm µm/N, the unit of the standard');
const endless = practice(1e12, 'a ring counts as a gear without end');
const solidDisc = practice(1, 'wheels taken as solid discs');
const cold = practice(1, 'at 23 °C: warm teeth give more, and a stiff train makes the harder blow');

/** Stiffness of the mesh along its line of action for each metre of width, N/m², at 23 °C, or why it is not known. */
export function lineStiffnessOf(work: Work, g: StageGeometry): Traced | string {
  const { sheet } = work;
  const { at, stage, mesh, betaB: beta_b, beta } = g;
  if (g.missing !== null || mesh === null) return g.missing ?? 'The stage has no mesh.';
  const E_1 = modulusOf(work, g, 'pinion');
  const E_2 = modulusOf(work, g, 'wheel');
  if (typeof E_1 === 'string') return E_1;
  if (typeof E_2 === 'string') return E_2;
  const virtual = (side: Side) =>
    g[side].internal
      ? endless
      : sheet.work(
          'gears',
          g[side].at,
          virtualToothNumber,
          { z: stage[side].teeth, beta_b, beta },
          'z_n.mesh',
        );
  const q_pr = sheet.work('gears', at, toothCompliance, {
    q_0: unit,
    z_n1: virtual('pinion'),
    z_n2: virtual('wheel'),
    x_1: stage.pinion.shift,
    x_2: stage.wheel.shift,
  });
  if (!(q_pr.value > 0)) return 'With such profile shifts the stiffness of the teeth cannot be told.';
  const C_B = sheet.work('gears', at, rackStiffnessFactor, {
    h_fP: rack.dedendum,
    alpha_n: stage.pressureAngle,
  });
  const c_pr = sheet.work('gears', at, singleStiffness, { C_R: solidDisc, C_B, beta, q_pr });
  const c_m = sheet.work(
    'gears',
    at,
    stiffnessByModulus,
    { c_pr, E_1, E_2, E_St: cited(metalTeeth.modulus, 'modulus of steel') },
    'c_m',
    'As at a load of 100 N/mm and more: lightly loaded metal teeth give more.',
  );
  return sheet.work('gears', at, meshStiffness, { c_pr: c_m, eps_alpha: mesh.contactRatio });
}

/** The width that carries, without the gap between the halves. */
export function widthOf(work: Work, { at, stage }: StageGeometry): Traced | string {
  const gap = stage.apexGap ?? null;
  if (gap === null || gap.value === 0) return stage.faceWidth;
  const b = work.sheet.work('gears', at, usableFaceWidth, { b: stage.faceWidth, gap }, 'b_u.mesh');
  return b.value > 0 ? b : 'The gap between the halves leaves no width.';
}

function modulusOf(work: Work, g: StageGeometry, side: Side): Traced | string {
  const gear = g.stage[side];
  const m = gearMaterial(work.book, gear);
  const n = ruleValue('rule_solid_fraction', 'core_modulus_exponent');
  if (m.modulus === undefined) return lacking(m, 'E_xy');
  if (n === undefined) return 'The catalogue holds no exponent for part-filled sections.';
  const given = { E: catalogued(m.modulus), f_T: cold, phi_s: gear.solidFraction, n: catalogued(n) };
  return work.sheet.work('gears', g[side].at, workingModulus, given, 'E_cold');
}

/** Backlash at the wheel with the pinion held, or why it is not known. */
export function backlashOf(work: Work, g: StageGeometry): Backlash | string {
  const play = meshPlayOf(work, g);
  if (typeof play === 'string' || g.mesh === null) return typeof play === 'string' ? play : noMesh;
  const d_w = g.mesh.pitchDiameter2;
  const turned = (j_wt: Traced | string, as: string) =>
    typeof j_wt === 'string'
      ? j_wt
      : work.sheet.work('gears', g.at, angularBacklash, { j_wt, d_w }, `phi_j.${as}`);
  return {
    nominal: work.sheet.work('gears', g.at, angularBacklash, { j_wt: play.nominal, d_w }, 'phi_j.own'),
    least: turned(play.least, 'least'),
    greatest: turned(play.greatest, 'greatest'),
  };
}

const noMesh = 'it has no mesh.';
const nothingThinned = practice(0, 'teeth of nominal thickness: no thinning entered');
const ends = {
  least: practice(-1, 'the end of the tolerance with the least play'),
  greatest: practice(1, 'the end of the tolerance with the most play'),
} as const;

/** Play along the working pitch circle, m: nominal, least and greatest. */
export function meshPlayOf(work: Work, g: StageGeometry): Backlash | string {
  const { mesh, backlash, stage } = g;
  if (mesh === null) return g.missing ?? noMesh;
  if (backlash === null) return 'enter the centre distance that the case holds.';
  const A_s = stage.thinning ?? nothingThinned;
  const none = practice(0, 'the nominal');
  const nominal = work.sheet.work(
    'gears',
    g.at,
    thinnedBacklash,
    { j_a: backlash, A_s, s_t: none, T_s: none },
    'j_wt.nominal',
  );
  const end = (which: 'least' | 'greatest') => endOf(work, g, mesh, which);
  return { nominal, least: end('least'), greatest: end('greatest') };
}

function endOf(work: Work, g: StageGeometry, mesh: Mesh, which: 'least' | 'greatest'): Traced | string {
  const { sheet } = work;
  const { at, stage, aw } = g;
  const { centreTolerance: A_a, thinning: A_s, thinningTolerance: T_s } = stage;
  if (A_a == null || A_s == null || T_s == null || aw === null)
    return 'enter the tolerance of the centre distance, the thinning of the teeth and its tolerance.';
  const s_t = ends[which];
  const { internal } = g.wheel;
  // Play grows with the distance of the axes, inside a ring with their nearness.
  const s_a = internal ? ends[which === 'least' ? 'greatest' : 'least'] : s_t;
  const a = sheet.work('gears', at, centreAtLimit, { a: mesh.a, s_a, A_a }, `a.${which}`);
  const angle = (centre: Traced, as: string) =>
    finite(
      sheet.work(
        'gears',
        at,
        workingAngleFromCentreDistance,
        { a_d: mesh.a, alpha_t: mesh.alphaWt, a: centre },
        `alpha_wt.${as}`,
      ),
    );
  const alpha_w0 = angle(aw, `free.${which}`);
  const alpha_wt = angle(a, which);
  if (alpha_w0 === null || alpha_wt === null || alpha_wt.value <= 0)
    return 'at the end of its tolerance the centre distance is too small for the teeth.';
  const from = internal ? internalBacklashFromCentreDistance : backlashFromCentreDistance;
  const j_a = sheet.work('gears', at, from, { a, alpha_w0, alpha_wt }, `j_a.${which}`);
  return sheet.work('gears', at, thinnedBacklash, { j_a, A_s, s_t, T_s }, `j_wt.${which}`);
}

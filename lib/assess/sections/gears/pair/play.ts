// Play and stiffness of one external mesh, as its stage hands them on.
import { angularBacklash } from '@/lib/calc/gears/backlash/mesh';
import type { StageLoads, Work } from '../../../work';
import type { StageGeometry } from './geometry';

/** Torsional stiffness on the wheel, N m/rad, or why it is not known. */
export function meshStiffnessOf(_work: Work, g: StageGeometry): StageLoads['meshStiffness'] {
  return g.missing ?? 'The stiffness of the mesh is not worked.';
}

/** Backlash at the wheel, or why it is not known. */
export function backlashOf(work: Work, g: StageGeometry): StageLoads['backlash'] {
  if (g.mesh === null) return g.missing ?? 'it has no mesh.';
  if (g.backlash === null) return 'enter the centre distance that the case holds.';
  if (g.backlash.value < 0) return 'the teeth bind at the centre distance entered.';
  const nominal = work.sheet.work(
    'gears',
    g.at,
    angularBacklash,
    { j_wt: g.backlash, d_w: g.mesh.pitchDiameter2 },
    'phi_j.own',
  );
  return { least: nominal, nominal, greatest: nominal };
}

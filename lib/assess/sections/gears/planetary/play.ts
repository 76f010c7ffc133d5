// Play and stiffness of a planetary set at the member that gives its output.
import { carrierBacklash, ringBacklash } from '@/lib/calc/gears/backlash/limits';
import { carrierStiffness, meshPitchStiffness, ringStiffness } from '@/lib/calc/gears/backlash/set-stiffness';
import type { Traced } from '@/lib/quantity/traced';
import type { StageLoads, Work } from '../../../work';
import type { StageGeometry } from '../pair/geometry';
import { lineStiffnessOf, meshPlayOf, widthOf } from '../pair/play';
import type { Meshes } from './meshes';
import { type PlanetarySI, roles } from './set';

/** Torsional stiffness at the output member, N m/rad, or why it is not known. */
export function setStiffness(work: Work, at: string, stage: PlanetarySI, meshes: Meshes): Traced | string {
  const c_s = pitchStiffness(work, meshes.sun);
  if (typeof c_s === 'string') return c_s;
  const c_r = pitchStiffness(work, meshes.ring);
  if (typeof c_r === 'string') return c_r;
  const { mesh } = meshes.ring;
  if (mesh === null) return 'The set has no mesh.';
  const common = { N: stage.planets, c_s, c_r };
  return roles[stage.fixed].output === 'carrier'
    ? work.sheet.work('gears', at, carrierStiffness, { ...common, a: mesh.a })
    : work.sheet.work('gears', at, ringStiffness, { ...common, d_w: mesh.pitchDiameter2 });
}

function pitchStiffness(work: Work, g: StageGeometry): Traced | string {
  const c_gamma = lineStiffnessOf(work, g);
  if (typeof c_gamma === 'string') return c_gamma;
  const b = widthOf(work, g);
  if (typeof b === 'string') return b;
  if (g.mesh === null) return 'The set has no mesh.';
  return work.sheet.work('gears', g.at, meshPitchStiffness, { c_gamma, b, alpha_wt: g.mesh.alphaWt });
}

/** Backlash at the output member with the input held, or why it is not known. */
export function setBacklash(
  work: Work,
  at: string,
  stage: PlanetarySI,
  meshes: Meshes,
): StageLoads['backlash'] {
  const sun = meshPlayOf(work, meshes.sun);
  if (typeof sun === 'string') return sun;
  // The centre distance that the sun’s mesh sets is that of the ring’s.
  const ring = meshPlayOf(work, meshes.ring);
  if (typeof ring === 'string') return ring;
  const { mesh } = meshes.ring;
  if (mesh === null) return 'it has no mesh.';
  const turned = (j_s: Traced, j_r: Traced, as: string) =>
    roles[stage.fixed].output === 'carrier'
      ? work.sheet.work('gears', at, carrierBacklash, { j_s, j_r, a: mesh.a }, as)
      : work.sheet.work('gears', at, ringBacklash, { j_s, j_r, d_w: mesh.pitchDiameter2 }, as);
  const end = (which: 'least' | 'greatest') => {
    const j_s = sun[which];
    const j_r = ring[which];
    if (typeof j_s === 'string') return j_s;
    if (typeof j_r === 'string') return j_r;
    return turned(j_s, j_r, `phi_j.${which}`);
  };
  return {
    nominal: turned(sun.nominal, ring.nominal, 'phi_j.own'),
    least: end('least'),
    greatest: end('greatest'),
  };
}

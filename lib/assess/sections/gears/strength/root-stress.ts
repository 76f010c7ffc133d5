// Bending stress at the tooth root at the peak and while holding, and what the checks of one gear work from.
import { creditedContactRatio } from '@/lib/calc/gears/service/mesh';
import {
  rootContactRatioFactor,
  rootHelixFactor,
  rootStress,
  rootStressMetal,
} from '@/lib/calc/gears/strength/root-stress';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../../sheet';
import type { Work } from '../../../work';
import type { StageGeometry } from '../pair/geometry';
import type { Side } from '../pair/stage';
import type { StageLoad } from '../service/loads';
import type { GearMaterial } from '../service/materials';
import type { Retention } from '../service/temperature';
import { toothForm } from './form';
import { metalLoad } from './load-factors';

export interface RootMeshFactors {
  readonly Y_eps: Traced;
  readonly Y_beta: Traced;
}

/** What the checks of one gear need; anything not known is the sentence that says why. */
export interface GearCase {
  readonly geometry: StageGeometry;
  readonly side: Side;
  readonly material: GearMaterial;
  readonly mate: GearMaterial;
  readonly load: StageLoad;
  readonly shares: RootMeshFactors | null;
  /** Mean stress influence of a tooth that is bent both ways however the drive turns: a planet. */
  readonly meanStress?: Traced;
  readonly atRoot: Retention | string;
  readonly atFlank: Retention | string;
}

export interface RootStress {
  readonly peak: Traced;
  readonly hold: Traced;
}

/** The stress at both torques, or why it is not known. */
export function rootStressOf(
  work: Work,
  { geometry: g, side, material, mate, load, shares }: GearCase,
): RootStress | string {
  if (shares === null || g.missing !== null) return g.missing ?? 'The stage has no mesh.';
  const form = toothForm(work, g, side);
  if (typeof form === 'string') return form;
  const { at } = g[side];
  const K_A = work.design.duty.shockFactor;
  const common = { b: g.stage.faceWidth, m_n: g.stage.module, ...form, ...shares };
  const metals = material.kind === 'metal' && mate.kind === 'metal';
  const note = 'Load at the tip of one tooth, shared by the contact ratio.';
  const stress = (F_t: Traced, K: Traced, as: string) =>
    metals
      ? work.sheet.work(
          'gears',
          at,
          rootStressMetal,
          {
            F_t,
            ...common,
            K_A: K,
            K_v: metalLoad.dynamic,
            K_Fbeta: metalLoad.face,
            K_Falpha: metalLoad.sharing,
          },
          as,
          note,
        )
      : work.sheet.work('gears', at, rootStress, { K_F: K, F_t, ...common }, as, note);
  return {
    peak: stress(load.forcePeak, K_A, 'sigma_F.peak'),
    hold: stress(load.forceHold, unshocked, 'sigma_F.hold'),
  };
}

const unshocked = practice(1, 'a held torque does not shock');

/** Factors of the mesh that both roots share; null without a mesh. */
export function rootMeshFactors(work: Work, g: StageGeometry): RootMeshFactors | null {
  const { sheet } = work;
  const { mesh } = g;
  if (mesh === null) return null;
  const eps_alphan = sheet.work('gears', g.at, creditedContactRatio, { eps_alphan: mesh.virtualRatio });
  return {
    Y_eps: sheet.work('gears', g.at, rootContactRatioFactor, { eps_alphan }),
    Y_beta: sheet.work('gears', g.at, rootHelixFactor, { eps_beta: mesh.overlap, beta: g.beta }),
  };
}

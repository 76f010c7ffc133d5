// Bending stress at the tooth root at the peak and while holding, and what the checks of one gear work from.

import { rimmedRootStress } from '@/lib/calc/gears/internal/root-form';
import { creditedContactRatio } from '@/lib/calc/gears/service/mesh';
import { forceOfStep, rootStressOfStep } from '@/lib/calc/gears/service/spectrum';
import {
  metalRootStress,
  rootContactRatioFactor,
  rootHelixFactor,
  rootStress,
} from '@/lib/calc/gears/strength/root-stress';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../../sheet';
import type { Work } from '../../../work';
import type { StageGeometry } from '../pair/geometry';
import type { LoadStep } from '../service/spectrum';
import { type ToothForm, toothForm } from './form';
import { type GearCase, pathOf, type RootMeshFactors } from './gear-case';
import { metalLoadCaveat, metalLoadOf } from './load-factors';
import type { Rim } from './rim';

/** What a stress needs of a load of the spectrum. */
export type Torque = Pick<LoadStep, 'id' | 'torque'>;

/** Stress of a load where stress grows with torque, from that at the peak. */
export function stressInProportion(work: Work, at: string, peak: Traced): (step: Torque) => Traced {
  const T_peak = work.design.duty.peakTorque;
  return ({ id, torque: T }) =>
    T.value === T_peak.value
      ? peak
      : work.sheet.work('gears', at, rootStressOfStep, { sigma_F: peak, T, T_peak }, `sigma_F.${id}`);
}

export interface RootStress {
  readonly peak: Traced;
  readonly hold: Traced;
  readonly form: ToothForm;
  /** What is taken of its body and its load, in sentences. */
  readonly caveats: readonly string[];
  /** In a load of the spectrum. */
  of(step: Torque): Traced;
}

/** The stress at both torques and in every load, or why it is not known. */
export function rootStressOf(work: Work, c: GearCase, rim: Rim | string): RootStress | string {
  const { geometry: g, side, material, mate, load, shares } = c;
  if (shares === null || g.missing !== null) return g.missing ?? 'The stage has no mesh.';
  const form = toothForm(work, g, side);
  if (typeof form === 'string') return form;
  if (typeof rim === 'string') return rim;
  const at = pathOf(c);
  const { sheet } = work;
  const { Y_Fa, Y_Sa } = form;
  const common = { b: g.stage.faceWidth, m_n: g.stage.module, Y_Fa, Y_Sa, ...shares };
  const metal =
    material.kind === 'metal'
      ? metalLoadOf(work, at, g, load, [material, mate], { Y_eps: shares.Y_eps, side })
      : null;
  if (typeof metal === 'string') return metal;
  /** The name of a stress that a rim or load factors still change. */
  const named = (id: string) => `sigma_F.${id}${rim.factor === null && metal === null ? '' : '.nominal'}`;
  const nominal = (F_t: Traced, K_F: Traced, id: string) =>
    sheet.work('gears', at, rootStress, { K_F, F_t, ...common }, named(id), note);
  const whole = (sigma: Traced, F_t: Traced, id: string) => {
    const rimmed =
      rim.factor === null
        ? sigma
        : sheet.work(
            'gears',
            at,
            rimmedRootStress,
            { sigma_F: sigma, Y_B: rim.factor },
            metal === null ? `sigma_F.${id}` : `sigma_F.${id}.rimmed`,
          );
    if (metal === null) return rimmed;
    const { dynamic: K_v, face: K_Fbeta, sharing: K_Falpha } = metal(F_t, id);
    const inputs = { sigma_F0: rimmed, K_v, K_Fbeta, K_Falpha };
    return sheet.work('gears', at, metalRootStress, inputs, `sigma_F.${id}`);
  };
  const { shockFactor: K_A, peakTorque: T_peak } = work.design.duty;
  const full = nominal(load.forcePeak, K_A, 'peak');
  const held = nominal(load.forceHold, unshocked, 'hold');
  const peak = whole(full, load.forcePeak, 'peak');
  const inProportion = stressInProportion(work, at, peak);
  return {
    peak,
    hold: metal === null ? whole(held, load.forceHold, 'hold') : held,
    form,
    caveats: [metal === null ? null : metalLoadCaveat, rim.caveat].filter((words) => words !== null),
    of: ({ id, torque: T }) => {
      if (metal === null || T.value === T_peak.value) return inProportion({ id, torque: T });
      const F_t = sheet.work('gears', at, forceOfStep, { F_t: load.forcePeak, T, T_peak }, `F_t.${id}`);
      const sigma = sheet.work('gears', at, rootStressOfStep, { sigma_F: full, T, T_peak }, named(id));
      return whole(sigma, F_t, id);
    },
  };
}

const note = 'Load at the tip of one tooth, shared by the contact ratio.';
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

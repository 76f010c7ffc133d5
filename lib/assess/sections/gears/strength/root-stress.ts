// Bending stress at the tooth root at the peak and while holding, and what the checks of one gear work from.

import { toothDepth } from '@/lib/calc/gears/geometry/diameters';
import { gearRimFactor, rimmedRootStress, ringRimFactor } from '@/lib/calc/gears/internal/root-form';
import { creditedContactRatio } from '@/lib/calc/gears/service/mesh';
import { bodyThickness } from '@/lib/calc/gears/strength/rim';
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
import { type ToothForm, toothForm } from './form';
import { metalLoadCaveat, metalLoadOf } from './load-factors';

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
  readonly atRoot: Retention | string;
  readonly atFlank: Retention | string;
  /** Words for the gear where `Stage 3 pinion` will not do. */
  readonly name?: string;
  /** Diameter of the hole in its body; null where it is not entered, absent where the body has none. */
  readonly bore?: Traced | null;
  /** Bends both ways at every turn: a planet or an idler. */
  readonly idler?: true;
  /** A ring gear: its rim lies outside the teeth. */
  readonly ring?: true;
  /** One of an internal pair, ring or not. */
  readonly internal?: true;
}

/** Path of the gear, e.g. `train.stages.k3f.pinion`. */
export function pathOf({ geometry, side }: GearCase): string {
  return geometry[side].at;
}

export function nameOf({ geometry, side, name }: GearCase): string {
  return name ?? `${geometry.place} ${geometry[side].name}`;
}

export interface RootStress {
  readonly peak: Traced;
  readonly hold: Traced;
  readonly form: ToothForm;
  /** What is taken of its body and its load, in sentences. */
  readonly caveats: readonly string[];
}

/** The stress at both torques, or why it is not known. */
export function rootStressOf(work: Work, c: GearCase): RootStress | string {
  const { geometry: g, side, material, mate, load, shares } = c;
  if (shares === null || g.missing !== null) return g.missing ?? 'The stage has no mesh.';
  const form = toothForm(work, g, side);
  if (typeof form === 'string') return form;
  const rim = rimOf(work, c);
  if (typeof rim === 'string') return rim;
  const at = pathOf(c);
  const K_A = work.design.duty.shockFactor;
  const { Y_Fa, Y_Sa } = form;
  const common = { b: g.stage.faceWidth, m_n: g.stage.module, Y_Fa, Y_Sa, ...shares };
  const metal =
    material.kind === 'metal'
      ? metalLoadOf(work, at, g, load, [material, mate], { Y_eps: shares.Y_eps, side })
      : null;
  if (typeof metal === 'string') return metal;
  const stress = (F_t: Traced, K: Traced, when: 'peak' | 'hold') => {
    const as = rim.factor === null ? `sigma_F.${when}` : `sigma_F.${when}.fullBody`;
    const full =
      metal === null
        ? work.sheet.work('gears', at, rootStress, { K_F: K, F_t, ...common }, as, note)
        : work.sheet.work(
            'gears',
            at,
            rootStressMetal,
            {
              F_t,
              ...common,
              K_A: K,
              K_v: metal.dynamic,
              K_Fbeta: metal.face,
              K_Falpha: metal.sharing,
            },
            as,
            note,
          );
    return rim.factor === null
      ? full
      : work.sheet.work('gears', at, rimmedRootStress, { sigma_F: full, Y_B: rim.factor }, `sigma_F.${when}`);
  };
  const said = [metal === null ? null : metalLoadCaveat, rim.caveat];
  return {
    peak: stress(load.forcePeak, K_A, 'peak'),
    hold: stress(load.forceHold, unshocked, 'hold'),
    form,
    caveats: said.filter((words) => words !== null),
  };
}

const note = 'Load at the tip of one tooth, shared by the contact ratio.';
const unshocked = practice(1, 'a held torque does not shock');

interface Rim {
  /** Null for a body taken as full. */
  readonly factor: Traced | null;
  readonly caveat: string | null;
}

const fullBody = 'A full body is taken under the teeth: enter its rim, or the diameter in its hub.';

/** Factor of a thin rim, from the rim entered or from the body around the bore; or why the stress cannot be told. */
function rimOf(work: Work, c: GearCase): Rim | string {
  const { geometry: g, side } = c;
  const at = pathOf(c);
  const { root, tip } = g[side];
  const s_R = rimThickness(work, c);
  if (s_R === null)
    return { factor: null, caveat: c.bore === undefined && c.ring !== true ? null : fullBody };
  if (c.ring === true) {
    const m_n = g.stage.module;
    if (s_R.value <= 1.75 * m_n.value)
      return 'The rim of the ring is thinner than 1.75 modules: no factor covers it, and it would crack through.';
    return { factor: work.sheet.work('gears', at, ringRimFactor, { m_n, s_R }), caveat: null };
  }
  if (tip === null) return 'The tip diameter is not known.';
  const h_t = work.sheet.work('gears', at, toothDepth, { d_a: tip, d_f: root }, 'h_t');
  if (s_R.value <= 0.5 * h_t.value)
    return 'The body under its teeth is thinner than half their depth: no factor covers it, and it would crack through.';
  return { factor: work.sheet.work('gears', at, gearRimFactor, { h_t, s_R }), caveat: null };
}

/** The rim entered, else the body between roots and bore; null when neither is known. */
function rimThickness(work: Work, c: GearCase): Traced | null {
  const { geometry: g, side, bore } = c;
  const { rim } = g.stage[side];
  if (rim !== null) return rim;
  if (bore === undefined || bore === null || c.ring === true) return null;
  return work.sheet.work('gears', pathOf(c), bodyThickness, { d_f: g[side].root, d_bore: bore });
}

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

// One gear of a stage: its diameters, the crest of its teeth, and how far it is from being undercut.
import {
  baseDiameter,
  referenceDiameter,
  rootDiameter,
  tipDiameter,
} from '@/lib/calc/gears/geometry/diameters';
import {
  normalTipThickness,
  tipHelixAngle,
  tipPressureAngle,
  tipThickness,
  toothThickness,
  transverseToothThickness,
} from '@/lib/calc/gears/geometry/thickness';
import { undercutShift } from '@/lib/calc/gears/geometry/tooth-count';
import { undercutMargin } from '@/lib/calc/gears/service/mesh';
import type { Traced } from '@/lib/quantity/traced';
import { finite, type Work } from '../../../work';
import { nameOf, rack, type Side, type StagePlace } from './stage';

export interface GearGeometry {
  /** Path, e.g. `train.stages.k3f.pinion`. */
  readonly at: string;
  readonly side: Side;
  /** What it is called: `pinion`, `planet at the ring`. */
  readonly name: string;
  /** A ring: its teeth point inwards. */
  readonly internal: boolean;
  readonly reference: Traced;
  readonly base: Traced;
  readonly root: Traced;
  /** Null when the pair has no centre distance from which the tip could be set. */
  readonly tip: Traced | null;
  /** Normal thickness of the crest. */
  readonly crest: Traced | null;
  /** Profile shift less the least without undercut; below zero the foot is cut away. Null for a ring. */
  readonly undercutMargin: Traced | null;
  /** Why it has no usable flank, or null. */
  readonly missing: string | null;
}

export function gearGeometry(
  work: Work,
  place: StagePlace,
  side: Side,
  angles: { readonly beta: Traced; readonly alphaT: Traced },
  k: Traced | null,
): GearGeometry {
  const { sheet } = work;
  const { stage } = place;
  const { at, words: name } = nameOf(place, side);
  const { teeth: z, shift: x } = stage[side];
  const { beta, alphaT: alpha_t } = angles;
  const m_n = stage.module;
  const d = sheet.work('gears', at, referenceDiameter, { z, m_n, beta });
  const d_b = sheet.work('gears', at, baseDiameter, { d, alpha_t });
  const d_f = sheet.work('gears', at, rootDiameter, { d, m_n, h_fP: rack.dedendum, x });
  const x_min = sheet.work('gears', at, undercutShift, { h_aP: rack.addendum, z, beta, alpha_t });
  const margin = sheet.work('gears', at, undercutMargin, { x, x_min });
  const tip = k === null ? null : sheet.work('gears', at, tipDiameter, { d, m_n, h_aP: rack.addendum, x, k });
  const common = {
    at,
    side,
    name,
    internal: false,
    reference: d,
    base: d_b,
    root: d_f,
    tip,
    undercutMargin: margin,
  };
  if (tip !== null && tip.value <= d_b.value)
    return {
      crest: null,
      missing: `The tip of the ${name} lies inside its base circle: no flank is left.`,
      ...common,
    };
  if (d_f.value <= 0)
    return { crest: null, missing: `The ${name} has no body left inside its roots.`, ...common };
  return {
    crest: tip === null ? null : crestOf(work, place, at, side, angles, d, d_b, tip),
    missing: null,
    ...common,
  };
}

function crestOf(
  work: Work,
  { stage }: StagePlace,
  at: string,
  side: Side,
  { beta, alphaT: alpha_t }: { readonly beta: Traced; readonly alphaT: Traced },
  d: Traced,
  d_b: Traced,
  d_a: Traced,
): Traced | null {
  const { sheet } = work;
  const s_n = sheet.work('gears', at, toothThickness, {
    m_n: stage.module,
    x: stage[side].shift,
    alpha_n: stage.pressureAngle,
  });
  const s_t = sheet.work('gears', at, transverseToothThickness, { s_n, beta });
  const alpha_at = sheet.work('gears', at, tipPressureAngle, { d_b, d_a });
  const s_at = sheet.work('gears', at, tipThickness, { d_a, s_t, d, alpha_t, alpha_at });
  const beta_a = sheet.work('gears', at, tipHelixAngle, { d_a, d, beta });
  return finite(sheet.work('gears', at, normalTipThickness, { s_at, beta_a }));
}

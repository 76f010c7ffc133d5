// The body under the teeth: its thickness as entered or as its joint leaves it, and what a thin one costs the roots.
import { toothDepth } from '@/lib/calc/gears/geometry/diameters';
import { gearRimFactor, ringRimFactor } from '@/lib/calc/gears/internal/root-form';
import { bodyThickness } from '@/lib/calc/gears/strength/rim';
import type { Traced } from '@/lib/quantity/traced';
import { addFigure, type Work } from '../../../work';
import { type GearCase, nameOf, pathOf } from './gear-case';

export interface Rim {
  /** Null for a body taken as full. */
  readonly factor: Traced | null;
  readonly caveat: string | null;
}

const fullBody = 'A full body is taken under the teeth: enter its rim, or the diameter in its hub.';
const onePiece = 'It is one piece with its shaft, so no rim bends.';

/** Factor of the rim, with its figure; or why the stress on it cannot be told. */
export function rimOf(work: Work, c: GearCase): Rim | string {
  const s_R = thicknessOf(work, c);
  const factor = s_R === null ? null : factorOf(work, c, s_R);
  const whole = c.bore === undefined && c.ring !== true;
  addFigure(work, {
    key: `${pathOf(c)}.rimFactor`,
    section: 'gears',
    label: `${nameOf(c)}, root stress on its body over that on a full one`,
    symbol: 'Y_B',
    unit: '1',
    value: typeof factor === 'string' ? null : factor,
    better: 'less',
    missing: typeof factor === 'string' ? factor : whole ? onePiece : fullBody,
  });
  if (typeof factor === 'string') return factor;
  return { factor, caveat: factor === null && !whole ? fullBody : null };
}

function factorOf(work: Work, c: GearCase, s_R: Traced): Traced | string {
  const { geometry: g, side } = c;
  const at = pathOf(c);
  if (c.ring === true) {
    const m_n = g.stage.module;
    if (s_R.value <= 1.75 * m_n.value)
      return 'The rim of the ring is thinner than 1.75 modules: no factor covers it, and it would crack through.';
    return work.sheet.work('gears', at, ringRimFactor, { m_n, s_R });
  }
  const { root, tip } = g[side];
  if (tip === null) return g.missing ?? 'The tip diameter is not known.';
  const h_t = work.sheet.work('gears', at, toothDepth, { d_a: tip, d_f: root }, 'h_t');
  if (s_R.value <= 0.5 * h_t.value)
    return 'The body under its teeth is thinner than half their depth: no factor covers it, and it would crack through.';
  return work.sheet.work('gears', at, gearRimFactor, { h_t, s_R });
}

/** The rim entered, else the body between roots and bore; null when neither is known. */
function thicknessOf(work: Work, c: GearCase): Traced | null {
  const { geometry: g, side, bore } = c;
  const { rim } = g.stage[side];
  if (rim !== null) return rim;
  if (bore === undefined || bore === null || c.ring === true) return null;
  return work.sheet.work('gears', pathOf(c), bodyThickness, { d_f: g[side].root, d_bore: bore });
}

// The ring of an internal mesh: its circles and the crest of its teeth.
import { baseDiameter, referenceDiameter } from '@/lib/calc/gears/geometry/diameters';
import {
  normalTipThickness,
  tipHelixAngle,
  tipPressureAngle,
  transverseToothThickness,
} from '@/lib/calc/gears/geometry/thickness';
import {
  ringRootDiameter,
  ringThicknessAt,
  ringTipDiameter,
  ringToothThickness,
} from '@/lib/calc/gears/internal/diameters';
import type { Traced } from '@/lib/quantity/traced';
import { finite, type Work } from '../../../work';
import type { GearGeometry } from '../pair/gear';
import { nameOf, rack, type StagePlace } from '../pair/stage';

interface Angles {
  readonly beta: Traced;
  readonly alphaT: Traced;
}

/** The ring stands where other pairs have their wheel. */
export function ringGeometry(work: Work, place: StagePlace, angles: Angles): GearGeometry {
  const { sheet } = work;
  const { at, words: name } = nameOf(place, 'wheel');
  const { module: m_n, wheel } = place.stage;
  const { teeth: z, shift: x_2 } = wheel;
  const d = sheet.work('gears', at, referenceDiameter, { z, m_n, beta: angles.beta });
  const d_b = sheet.work('gears', at, baseDiameter, { d, alpha_t: angles.alphaT });
  const tip = sheet.work('gears', at, ringTipDiameter, { d_2: d, m_n, h_aP: rack.addendum, x_2 });
  const root = sheet.work('gears', at, ringRootDiameter, { d_2: d, m_n, h_fP: rack.dedendum, x_2 });
  const common = {
    at,
    side: 'wheel',
    name,
    internal: true,
    reference: d,
    base: d_b,
    root,
    tip,
    undercutMargin: null,
  } as const;
  if (root.value <= d_b.value || tip.value <= 0)
    return {
      ...common,
      crest: null,
      missing: `The ${name} has no flank left: its teeth lie inside its base circle.`,
    };
  return { ...common, crest: crestOf(work, place, at, angles, d, d_b, tip), missing: null };
}

function crestOf(
  work: Work,
  { stage }: StagePlace,
  at: string,
  { beta, alphaT: alpha_t }: Angles,
  d_2: Traced,
  d_b: Traced,
  d_a: Traced,
): Traced | null {
  const { sheet } = work;
  const { module: m_n, pressureAngle: alpha_n, wheel } = stage;
  const s_n = sheet.work('gears', at, ringToothThickness, { m_n, x_2: wheel.shift, alpha_n });
  const s_t2 = sheet.work('gears', at, transverseToothThickness, { s_n, beta });
  const alpha_yt = finite(sheet.work('gears', at, tipPressureAngle, { d_b, d_a }));
  // Inside its base circle the flank is no involute; how thick the crest is there cannot be told.
  if (alpha_yt === null) return null;
  const s_at = sheet.work('gears', at, ringThicknessAt, { d_y: d_a, s_t2, d_2, alpha_t, alpha_yt });
  const beta_a = sheet.work('gears', at, tipHelixAngle, { d_a, d: d_2, beta });
  return finite(sheet.work('gears', at, normalTipThickness, { s_at, beta_a }));
}

// Where pinion and ring foul each other, and the figures of their mesh.
import { tipPressureAngle } from '@/lib/calc/gears/geometry/thickness';
import { ringRootClearance, ringTipClearance } from '@/lib/calc/gears/internal/diameters';
import {
  ringTipRoom,
  trimmingMargin,
  trimmingPinionAngle,
  trimmingRingAngle,
  trochoidMargin,
  trochoidPinionAngle,
  trochoidRingAngle,
} from '@/lib/calc/gears/internal/interference';
import type { Traced } from '@/lib/quantity/traced';
import { finite, type Work } from '../../../work';
import { add } from '../figures';
import type { InternalGeometry } from './geometry';

/** Figures of the ring mesh; the pinion’s own belong to whoever worked it. */
export function internalFigures(work: Work, g: InternalGeometry, pair: string): void {
  const { mesh, missing, wheel } = g;
  const fouling = foulingOf(work, g);
  const noGiven = 'Enter the centre distance that the case holds.';
  const held = g.aw === null ? missing : noGiven;
  add(work, g.at, pair, [
    ['backlashFreeDistance', 'centre distance without backlash', 'a_w', 'mm', g.aw, missing],
    ['centreDistanceExcess', 'centre distance beyond it', 'Δa', 'mm', g.excess, held],
    ['backlash', 'backlash on the pitch circle', 'j_wt', 'mm', g.backlash, held, 'less'],
    ['workingPressureAngle', 'working pressure angle', 'α_wt', 'deg', mesh?.alphaWt ?? null, missing],
    ['contactRatio', 'contact ratio', 'ε_α', '1', mesh?.contactRatio ?? null, missing, 'more'],
    ['overlapRatio', 'overlap ratio', 'ε_β', '1', mesh?.overlap ?? null, missing, 'more'],
    [
      'tipRoom',
      'ring tip beyond the limit of involute interference',
      'Δd_a2',
      'mm',
      fouling.tip,
      missing,
      'more',
    ],
    [
      'trochoidMargin',
      'margin against trochoid interference',
      'Δθ',
      'deg',
      fouling.trochoid,
      missing ?? 'The tip circles do not cross, or the ring’s tip lies inside its base circle.',
      'more',
    ],
    [
      'trimmingMargin',
      'margin for putting the gear in radially',
      'Δθ_r',
      'deg',
      fouling.trimming,
      missing ?? 'The tips do not stand so that the margin can be told.',
      'more',
    ],
    ['ringTipClearance', 'clearance of the ring’s tip', 'c_2', 'mm', fouling.ringTip, missing, 'more'],
    ['ringRootClearance', 'clearance in the ring’s root', 'c_1', 'mm', fouling.ringRoot, missing, 'more'],
  ]);
  add(work, wheel.at, `${g.place} ${wheel.name}`, [
    ['tipDiameter', 'tip diameter', 'd_a', 'mm', wheel.tip, wheel.missing],
    ['tipThickness', 'thickness of the crest', 's_an', 'mm', wheel.crest, wheel.missing, 'more'],
  ]);
}

interface Fouling {
  readonly tip: Traced | null;
  readonly trochoid: Traced | null;
  readonly trimming: Traced | null;
  readonly ringTip: Traced | null;
  readonly ringRoot: Traced | null;
}

/** Margins that are not numbers, as where the tip circles do not cross, are not assessed. */
function foulingOf(work: Work, g: InternalGeometry): Fouling {
  const { sheet } = work;
  const { at, mesh, tipLimit, pinion, wheel, stage } = g;
  const d_a1 = pinion.tip;
  const d_a2 = wheel.tip;
  if (mesh === null || tipLimit === null || d_a1 === null || d_a2 === null)
    return { tip: null, trochoid: null, trimming: null, ringTip: null, ringRoot: null };
  const { a } = mesh;
  const room = {
    tip: sheet.work('gears', at, ringTipRoom, { d_a2, d_lim: tipLimit }),
    ringTip: sheet.work('gears', at, ringTipClearance, { d_a2, a, d_f1: pinion.root }),
    ringRoot: sheet.work('gears', at, ringRootClearance, { d_f2: wheel.root, a, d_a1 }),
  };
  const angle = (d_b: Traced, d_a: Traced, as: string) =>
    finite(sheet.work('gears', at, tipPressureAngle, { d_b, d_a }, as));
  const alpha_a1 = angle(pinion.base, d_a1, 'alpha_a1');
  const alpha_a2 = angle(wheel.base, d_a2, 'alpha_a2');
  if (alpha_a1 === null || alpha_a2 === null) return { ...room, trochoid: null, trimming: null };
  const alpha_wt = mesh.alphaWt;
  const z_1 = stage.pinion.teeth;
  const z_2 = stage.wheel.teeth;
  const both = { alpha_a1, alpha_a2, alpha_wt, z_1, z_2 };
  return { ...room, trochoid: trochoidOf(), trimming: trimmingOf() };

  function trochoidOf(): Traced | null {
    if (d_a1 === null || d_a2 === null) return null;
    const theta_1 = finite(
      sheet.work('gears', at, trochoidPinionAngle, { d_a2, d_a1, a, alpha_a1: both.alpha_a1, alpha_wt }),
    );
    const theta_2 = finite(sheet.work('gears', at, trochoidRingAngle, { a, d_a2, d_a1 }));
    if (theta_1 === null || theta_2 === null) return null;
    return finite(
      sheet.work(
        'gears',
        at,
        trochoidMargin,
        { theta_1, z_1, z_2, alpha_wt, alpha_a2: both.alpha_a2, theta_2 },
        'Delta_theta.trochoid',
      ),
    );
  }

  function trimmingOf(): Traced | null {
    const angles = { alpha_a1: both.alpha_a1, alpha_a2: both.alpha_a2, z_1, z_2 };
    const theta_1 = finite(sheet.work('gears', at, trimmingPinionAngle, angles, 'theta_1.trimming'));
    const theta_2 = finite(sheet.work('gears', at, trimmingRingAngle, angles, 'theta_2.trimming'));
    if (theta_1 === null || theta_2 === null) return null;
    return finite(
      sheet.work('gears', at, trimmingMargin, { ...both, theta_1, theta_2 }, 'Delta_theta.trimming'),
    );
  }
}

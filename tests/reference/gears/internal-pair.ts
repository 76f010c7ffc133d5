/** A pinion inside a ring gear worked with the library's formulas from its shifts, as the handbook tables do. */
import * as angles from '@/lib/calc/gears/geometry/angles';
import { addendumContactRatio } from '@/lib/calc/gears/geometry/contact-ratio';
import * as diameters from '@/lib/calc/gears/geometry/diameters';
import { centreDistanceModification, workingCentreDistance } from '@/lib/calc/gears/geometry/pair';
import { tipPressureAngle, toothThickness } from '@/lib/calc/gears/geometry/thickness';
import * as contact from '@/lib/calc/gears/internal/contact-ratio';
import * as rings from '@/lib/calc/gears/internal/diameters';
import * as fouling from '@/lib/calc/gears/internal/interference';
import * as pairs from '@/lib/calc/gears/internal/pair';
import type { PairInput } from './pair';

export interface InternalPairInput extends PairInput {
  /** Addendum of pinion and ring in modules; 1 unless given. */
  readonly h_a1?: number;
  readonly h_a2?: number;
}

export function workInternalPair(g: InternalPairInput) {
  const alpha_t = angles.transversePressureAngle.of(g);
  const a_d = pairs.internalReferenceCentreDistance.of(g);
  const alpha_wt = pairs.internalWorkingAngleFromShifts.of({ ...g, alpha_t });
  const a = workingCentreDistance.of({ a_d, alpha_t, alpha_wt });
  const d_1 = diameters.referenceDiameter.of({ ...g, z: g.z_1 });
  const d_2 = diameters.referenceDiameter.of({ ...g, z: g.z_2 });
  const circles = {
    d_1,
    d_2,
    d_b1: diameters.baseDiameter.of({ d: d_1, alpha_t }),
    d_b2: diameters.baseDiameter.of({ d: d_2, alpha_t }),
    d_a1: diameters.tipDiameter.of({ d: d_1, m_n: g.m_n, h_aP: g.h_a1 ?? 1, x: g.x_1, k: 0 }),
    d_a2: rings.ringTipDiameter.of({ d_2, m_n: g.m_n, h_aP: g.h_a2 ?? 1, x_2: g.x_2 }),
    d_f1: diameters.rootDiameter.of({ d: d_1, m_n: g.m_n, h_fP: 1.25, x: g.x_1 }),
    d_f2: rings.ringRootDiameter.of({ d_2, m_n: g.m_n, h_fP: 1.25, x_2: g.x_2 }),
    d_w1: pairs.internalPitchDiameter.of({ ...g, a, z: g.z_1 }),
    d_w2: pairs.internalPitchDiameter.of({ ...g, a, z: g.z_2 }),
  };
  const p_bt = angles.transverseBasePitch.of({ ...g, alpha_t });
  const path = { ...circles, a, alpha_wt, p_bt };
  const s_n1 = toothThickness.of({ ...g, x: g.x_1 });
  return {
    ...g,
    ...path,
    alpha_t,
    a_d,
    y: centreDistanceModification.of({ a, a_d, m_n: g.m_n }),
    alpha_a1: tipPressureAngle.of({ d_b: circles.d_b1, d_a: circles.d_a1 }),
    alpha_a2: tipPressureAngle.of({ d_b: circles.d_b2, d_a: circles.d_a2 }),
    s_t1: s_n1 / Math.cos(g.beta),
    s_t2: rings.ringToothThickness.of(g) / Math.cos(g.beta),
    eps_1: addendumContactRatio.of({ d_a: circles.d_a1, d_b: circles.d_b1, alpha_wt, p_bt }),
    eps_2: contact.ringAddendumContactRatio.of(path),
    eps_alpha: contact.internalContactRatio.of(path),
  };
}

export type InternalPair = ReturnType<typeof workInternalPair>;

/** Margin against trochoid interference (rad). */
export function trochoid(pair: InternalPair): number {
  const theta_1 = fouling.trochoidPinionAngle.of(pair);
  const theta_2 = fouling.trochoidRingAngle.of(pair);
  return fouling.trochoidMargin.of({ ...pair, theta_1, theta_2 });
}

/** Margin for radial assembly (rad). */
export function trimming(pair: InternalPair): number {
  const theta_1 = fouling.trimmingPinionAngle.of(pair);
  const theta_2 = fouling.trimmingRingAngle.of(pair);
  return fouling.trimmingMargin.of({ ...pair, theta_1, theta_2 });
}

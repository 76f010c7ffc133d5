/** An external pair worked with the library's formulas from its shifts, as the handbook tables do. */
import * as angles from '@/lib/calc/gears/geometry/angles';
import * as contact from '@/lib/calc/gears/geometry/contact-ratio';
import * as diameters from '@/lib/calc/gears/geometry/diameters';
import * as pairs from '@/lib/calc/gears/geometry/pair';

export interface PairInput {
  readonly m_n: number;
  readonly alpha_n: number;
  readonly beta: number;
  readonly z_1: number;
  readonly z_2: number;
  readonly x_1: number;
  readonly x_2: number;
}

export function workPair(g: PairInput) {
  const alpha_t = angles.transversePressureAngle.of(g);
  const a_d = pairs.referenceCentreDistance.of(g);
  const alpha_wt = pairs.workingAngleFromShifts.of({ ...g, alpha_t });
  const a = pairs.workingCentreDistance.of({ a_d, alpha_t, alpha_wt });
  const y = pairs.centreDistanceModification.of({ a, a_d, m_n: g.m_n });
  const k = pairs.tipShortening.of({ ...g, y });
  const gear = (z: number, x: number, z_mate: number) => {
    const d = diameters.referenceDiameter.of({ ...g, z });
    return {
      d,
      d_b: diameters.baseDiameter.of({ d, alpha_t }),
      d_a: diameters.tipDiameter.of({ d, m_n: g.m_n, h_aP: 1, x, k }),
      d_f: diameters.rootDiameter.of({ d, m_n: g.m_n, h_fP: 1.25, x }),
      d_w: diameters.pitchDiameter.of({ a, z, z_mate }),
    };
  };
  const one = gear(g.z_1, g.x_1, g.z_2);
  const two = gear(g.z_2, g.x_2, g.z_1);
  const p_bt = angles.transverseBasePitch.of({ ...g, alpha_t });
  const eps_alpha = contact.transverseContactRatio.of({
    d_a1: one.d_a,
    d_b1: one.d_b,
    d_a2: two.d_a,
    d_b2: two.d_b,
    a,
    alpha_wt,
    p_bt,
  });
  return { alpha_t, alpha_wt, a_d, a, y, k, one, two, p_bt, eps_alpha };
}

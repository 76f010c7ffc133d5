/** The worm cases, worked with the library. */
import * as friction from '@/lib/calc/gears/worm/efficiency';
import * as shape from '@/lib/calc/gears/worm/geometry';
import type { Works } from '../case';

export const worm: Works = {
  'wrm-01-efficiency-table': (i) => {
    const rho_z = friction.wormFrictionAngle.of({ mu: i.of('f'), alpha_n: i.of('phi_n') });
    return {
      eta: i.list('lambda').map((gamma_m) => friction.wormEfficiency.of({ gamma_m, rho_z })),
    };
  },
  'wrm-02-forces': (i) => {
    const m_x = 1 / i.of('P');
    const d_m1 = i.of('d1');
    const omega_1 = i.of('n');
    const alpha_n = i.of('phi_n');
    const mu = i.of('f');
    const d_m2 = shape.wormWheelDiameter.of({ z_2: i.of('z2'), m_x, x_2: 0 });
    const gamma_m = shape.leadAngle.of({ z_1: i.of('z1'), m_x, d_m1 });
    const rho_z = friction.wormFrictionAngle.of({ mu, alpha_n });
    // The example gives the worm's power: its tangential force, and from it the axial one that makes it.
    const F_t1 = (2 * i.of('H')) / omega_1 / d_m1;
    const F_x1 = F_t1 / friction.wormTangentialForce.of({ F_x1: 1, gamma_m, rho_z });
    return {
      px: Math.PI * m_x,
      d2: d_m2,
      C: shape.wormCentreDistance.of({ d_m1, d_m2 }),
      lambda: gamma_m,
      VS: shape.wormSlidingSpeed.of({ omega_1, d_m1, gamma_m }),
      Wt: F_t1,
      Wr: friction.wormRadialForce.of({ F_x1, alpha_n, gamma_m, mu }),
      Wa: F_x1,
    };
  },
};

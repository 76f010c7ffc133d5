/** The worm cases, worked with the library. */
import * as friction from '@/lib/calc/gears/worm/efficiency';
import * as shape from '@/lib/calc/gears/worm/geometry';
import { input, inputs } from './cases';
import type { Work } from './geometry';

export const worm: Readonly<Record<string, Work>> = {
  'wrm-01-efficiency-table': () => {
    const id = 'wrm-01-efficiency-table';
    const rho_z = friction.wormFrictionAngle.of({ mu: input(id, 'f'), alpha_n: input(id, 'phi_n') });
    return {
      eta: inputs(id, 'lambda').map((gamma_m) => friction.wormEfficiency.of({ gamma_m, rho_z })),
    };
  },
  'wrm-02-forces': () => {
    const id = 'wrm-02-forces';
    const m_x = 1 / input(id, 'P');
    const d_m1 = input(id, 'd1');
    const omega_1 = input(id, 'n');
    const alpha_n = input(id, 'phi_n');
    const mu = input(id, 'f');
    const d_m2 = shape.wormWheelDiameter.of({ z_2: input(id, 'z2'), m_x, x_2: 0 });
    const gamma_m = shape.leadAngle.of({ z_1: input(id, 'z1'), m_x, d_m1 });
    const rho_z = friction.wormFrictionAngle.of({ mu, alpha_n });
    // The example gives the worm's power: its tangential force, and from it the axial one that makes it.
    const F_t1 = (2 * input(id, 'H')) / omega_1 / d_m1;
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

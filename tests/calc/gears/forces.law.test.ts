/** Laws of tooth forces and power: parts of one force, nothing lost from the balance, right direction. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { meshPowerLoss } from '@/lib/calc/gears/efficiency';
import * as force from '@/lib/calc/gears/forces';
import { referenceDiameter } from '@/lib/calc/gears/geometry/diameters';
import { degree, many, range, relative } from './draws';

describe('axial force', () => {
  // Common practice, no source: herringbone gears need no thrust bearing for the mesh, helical ones do.
  it('pushes the shaft of a helical gear and leaves that of a double-helical gear alone', () => {
    fc.assert(
      fc.property(range(1, 5000), range(5 * degree, 40 * degree), (F_t, beta) => {
        expect(force.axialForce.of({ F_t, beta })).toBeGreaterThan(0.08 * F_t);
        expect(force.netAxialForce.of({ F_t, q: 0.5, beta_1: beta, beta_2: -beta })).toBe(0);
        expect(force.axialForcePerHalf.of({ F_t, beta })).toBeGreaterThan(0);
      }),
      many,
    );
  });

  it('comes back in a double-helical gear whose halves share unequally, and in one of two equal hands', () => {
    const g = { F_t: 1000, beta_1: 30 * degree, beta_2: -30 * degree };
    expect(force.netAxialForce.of({ ...g, q: 0.6 })).toBeCloseTo(0.2 * 1000 * Math.tan(30 * degree), 9);
    expect(force.netAxialForce.of({ ...g, q: 0.5, beta_2: 30 * degree })).toBeCloseTo(
      force.axialForce.of({ F_t: 1000, beta: 30 * degree }),
      9,
    );
  });
});

describe('tooth forces', () => {
  it('are the three parts of the one normal force', () => {
    fc.assert(
      fc.property(
        range(1, 5000),
        range(15 * degree, 28 * degree),
        range(0, 40 * degree),
        (F_t, alpha_n, beta) => {
          const parts = Math.hypot(
            F_t,
            force.radialForce.of({ F_t, alpha_n, beta }),
            force.axialForce.of({ F_t, beta }),
          );
          expect(relative(parts, force.normalForce.of({ F_t, alpha_n, beta }))).toBeLessThan(1e-12);
        },
      ),
      many,
    );
  });

  it('of both gears are equal when the torques are in the ratio', () => {
    const [d_1, d_2] = [17, 51].map((z) => referenceDiameter.of({ z, m_n: 1e-3, beta: 0.3 }));
    const T_2 = force.wheelTorque.of({ T_1: 2, u: 3, eta: 1 });
    expect(force.tangentialForce.of({ T: T_2, d: d_2 ?? 0 })).toBeCloseTo(
      force.tangentialForce.of({ T: 2, d: d_1 ?? 0 }),
      9,
    );
  });
});

describe('power', () => {
  it('in is power out and the power lost in the mesh', () => {
    fc.assert(
      fc.property(
        range(0.1, 50),
        range(1, 500),
        range(1, 8),
        range(0.04, 0.4),
        range(0.05, 0.3),
        (T_1, w, u, mu, H_V) => {
          const P = force.shaftPower.of({ T: T_1, omega: w });
          const T_2 = force.wheelTorque.of({ T_1, u, eta: 1 - mu * H_V });
          const out = force.shaftPower.of({ T: T_2, omega: force.wheelSpeed.of({ omega_1: w, u }) });
          expect(relative(out + meshPowerLoss.of({ P, mu, H_V }), P)).toBeLessThan(1e-12);
          expect(relative(force.pinionTorque.of({ T_2, u, eta: 1 - mu * H_V }), T_1)).toBeLessThan(1e-12);
        },
      ),
      many,
    );
  });
});

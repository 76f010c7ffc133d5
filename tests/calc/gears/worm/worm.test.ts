/** Worms against the wedge of their thread: the balance of its forces as vectors, and of power. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as friction from '@/lib/calc/gears/worm/efficiency';
import * as shape from '@/lib/calc/gears/worm/geometry';
import { degree, many, range, relative } from '../draws';

type Vector = readonly [around: number, along: number, out: number];
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const size = (a: Vector) => Math.hypot(...a);

/**
 * The worm's thread as a wedge: directions around the worm, along its axis, outward. The square to the flank comes from
 * two lines in it: along the thread and out along the profile of the axial section.
 */
function wedge(gamma_m: number, alpha_x: number, mu: number) {
  const thread: Vector = [Math.cos(gamma_m), Math.sin(gamma_m), 0];
  const profile: Vector = [0, Math.tan(alpha_x), 1];
  const across = cross(profile, thread);
  const square = across.map((v) => v / size(across));
  // Square to the flank with an outward part, pressing against the turning of the worm and along its axis.
  const [around = 0, along = 0, out = 0] = square;
  const normal = { around: Math.abs(around), along: Math.abs(along), out: Math.abs(out) };
  const alpha_n = Math.asin(normal.out);
  const of = (sign: 1 | -1) => ({
    around: normal.around + sign * mu * thread[0],
    along: normal.along - sign * mu * thread[1],
    out: normal.out,
  });
  return { alpha_n, driving: of(1), driven: of(-1) };
}

const draws = [range(0.03, 0.65), range(0.25, 0.45), range(0.01, 0.2)] as const;

describe('a worm stage', () => {
  // Independent derivation: vectors of pressure and friction on the flank.
  it('has the normal pressure angle, the forces and the efficiency of the wedge of its thread', () => {
    fc.assert(
      fc.property(...draws, (gamma_m, alpha_x, mu) => {
        const { alpha_n, driving } = wedge(gamma_m, alpha_x, mu);
        expect(relative(shape.wormNormalAngle.of({ alpha_x, gamma_m }), alpha_n)).toBeLessThan(1e-9);
        const rho_z = friction.wormFrictionAngle.of({ mu, alpha_n });
        const F_x1 = driving.along;
        const F_t1 = friction.wormTangentialForce.of({ F_x1, gamma_m, rho_z });
        const F_r = friction.wormRadialForce.of({ F_x1, alpha_n, gamma_m, mu });
        expect(relative(F_t1, driving.around)).toBeLessThan(1e-9);
        expect(relative(F_r, driving.out)).toBeLessThan(1e-9);
        const eta = (driving.along * Math.tan(gamma_m)) / driving.around;
        expect(relative(friction.wormEfficiency.of({ gamma_m, rho_z }), eta)).toBeLessThan(1e-9);
      }),
      many,
    );
  });

  // Independent derivation: what goes in and does not come out is friction times pressure times sliding speed.
  it('loses the power that its sliding turns into heat', () => {
    fc.assert(
      fc.property(...draws, range(10, 600), (gamma_m, alpha_n, mu, omega_1) => {
        const d_m1 = 0.02;
        const F_x1 = friction.wormAxialForce.of({ T_2: 3, d_m2: 0.06 });
        const rho_z = friction.wormFrictionAngle.of({ mu, alpha_n });
        const worm = (friction.wormTangentialForce.of({ F_x1, gamma_m, rho_z }) * omega_1 * d_m1) / 2;
        const wheel = (F_x1 * Math.tan(gamma_m) * omega_1 * d_m1) / 2;
        const pressure = friction.wormRadialForce.of({ F_x1, alpha_n, gamma_m, mu }) / Math.sin(alpha_n);
        const heat = mu * pressure * shape.wormSlidingSpeed.of({ omega_1, d_m1, gamma_m });
        expect(relative(worm - wheel, heat)).toBeLessThan(1e-7);
        expect(relative(friction.wormEfficiency.of({ gamma_m, rho_z }), wheel / worm)).toBeLessThan(1e-9);
      }),
      many,
    );
  });

  it('turned by its wheel keeps what the wedge leaves, and holds exactly when the wedge gives nothing', () => {
    fc.assert(
      fc.property(...draws, (gamma_m, alpha_x, mu) => {
        const { alpha_n, driven } = wedge(gamma_m, alpha_x, mu);
        const rho_z = friction.wormFrictionAngle.of({ mu, alpha_n });
        const eta = driven.around / (driven.along * Math.tan(gamma_m));
        expect(friction.wormBackEfficiency.of({ gamma_m, rho_z })).toBeCloseTo(eta, 9);
        expect(friction.selfLockingMargin.of({ rho_z, gamma_m }) > 0).toBe(driven.around < 0);
      }),
      many,
    );
  });

  // Known of screws and worms: one that holds by itself loses at least half of what goes in.
  it('that holds by itself is at best half efficient when it drives', () => {
    fc.assert(
      fc.property(range(0.01, 0.3), range(0, 0.3), (gamma_m, more) => {
        expect(friction.wormEfficiency.of({ gamma_m, rho_z: gamma_m + more })).toBeLessThan(0.5);
      }),
      many,
    );
  });

  it('says with self-locking and with driving back that it must not be the only thing that holds a load', () => {
    for (const f of [friction.selfLockingMargin, friction.wormBackEfficiency])
      expect(f.validity).toMatch(/never the only thing that holds a load.*brake/);
  });

  it('of one start and module 1 on 16 mm with 40 teeth has 40:1, 3.58° of lead and 28 mm between its axes', () => {
    // By hand: atan(1/16), (16 + 40)/2.
    const d_m2 = shape.wormWheelDiameter.of({ z_2: 40, m_x: 1e-3, x_2: 0 });
    expect(shape.wormRatio.of({ z_2: 40, z_1: 1 })).toBe(40);
    expect(shape.leadAngle.of({ z_1: 1, m_x: 1e-3, d_m1: 16e-3 }) / degree).toBeCloseTo(3.576, 3);
    expect(shape.wormCentreDistance.of({ d_m1: 16e-3, d_m2 })).toBeCloseTo(28e-3, 12);
  });
});

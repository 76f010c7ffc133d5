// Specific sliding against velocities of the two flanks worked from the turning of the gears.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { activeProfileStart } from '@/lib/calc/gears/geometry/contact-ratio';
import { specificSliding, tipCurvature } from '@/lib/calc/gears/strength/sliding';
import { workPair } from '../../reference/gears/pair';
import { degree, many, range, relative } from './draws';

describe('specific sliding', () => {
  // Independent derivation: the point of contact lies on the line of action; each gear's velocity there is its angular
  // speed times the arm, and its part along the flank is found from components, not from radii of curvature.
  it('is the difference of the velocities along the flanks over that of the flank itself', () => {
    fc.assert(
      fc.property(range(17, 60), range(17, 90), range(-0.4, 0.4), (z_1, z_2, along) => {
        const pair = workPair({ m_n: 1e-3, alpha_n: 20 * degree, beta: 0, z_1, z_2, x_1: 0.1, x_2: 0 });
        const { alpha_wt, a, one, two } = pair;
        const s = along * one.d_w * Math.sin(alpha_wt) * 0.5;
        // Pinion at the origin, wheel at (a, 0); the line of action leans by the working angle from the common tangent.
        const normal = [Math.sin(alpha_wt), Math.cos(alpha_wt)] as const;
        const flank = [Math.cos(alpha_wt), -Math.sin(alpha_wt)] as const;
        const point = [one.d_w / 2 + s * normal[0], s * normal[1]] as const;
        const [w1, w2] = [z_2, -z_1];
        const velocity = (w: number, centre: number) => [-w * point[1], w * (point[0] - centre)] as const;
        const on = (v: readonly [number, number], e: readonly [number, number]) => v[0] * e[0] + v[1] * e[1];
        const [v1, v2] = [velocity(w1, 0), velocity(w2, a)];
        // Flanks in contact do not part.
        expect(on(v1, normal)).toBeCloseTo(on(v2, normal), 9);
        const rho = (one.d_w / 2) * Math.sin(alpha_wt) + s;
        const rho_mate = (two.d_w / 2) * Math.sin(alpha_wt) - s;
        const zeta = specificSliding.of({ rho, rho_mate, z: z_1, z_mate: z_2 });
        const [t1, t2] = [on(v1, flank), on(v2, flank)];
        expect(zeta).toBeCloseTo((t1 - t2) / t1, 9);
      }),
      many,
    );
  });

  it('vanishes at the pitch point, is negative at the foot and below one at the tip', () => {
    const g = { m_n: 1e-3, alpha_n: 20 * degree, beta: 0, z_1: 20, z_2: 40, x_1: 0, x_2: 0 };
    const { one, two, a, alpha_wt } = workPair(g);
    const rho = (d_w: number) => (d_w / 2) * Math.sin(alpha_wt);
    const pitch = specificSliding.of({ rho: rho(one.d_w), rho_mate: rho(two.d_w), z: 20, z_mate: 40 });
    expect(pitch).toBeCloseTo(0, 12);
    const start = (d_a_mate: number, d_b_mate: number) =>
      activeProfileStart.of({ a, alpha_wt, d_a_mate, d_b_mate });
    const foot = specificSliding.of({
      rho: start(two.d_a, two.d_b),
      rho_mate: tipCurvature.of(two),
      z: 20,
      z_mate: 40,
    });
    const tip = specificSliding.of({
      rho: tipCurvature.of(one),
      rho_mate: start(one.d_a, one.d_b),
      z: 20,
      z_mate: 40,
    });
    expect(foot).toBeLessThan(-1);
    expect(tip).toBeGreaterThan(0);
    expect(tip).toBeLessThan(1);
  });

  it('of one flank and its mate belong together: ζ_2 = ζ_1/(ζ_1 − 1)', () => {
    const one = specificSliding.of({ rho: 3, rho_mate: 8, z: 20, z_mate: 40 });
    const two = specificSliding.of({ rho: 8, rho_mate: 3, z: 40, z_mate: 20 });
    expect(relative(two, one / (one - 1))).toBeLessThan(1e-12);
  });
});

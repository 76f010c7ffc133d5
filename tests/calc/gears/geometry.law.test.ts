/** Laws of the geometry of a pair: inverses come back, and undercut begins where the fillet reaches the base circle. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { transversePressureAngle } from '@/lib/calc/gears/geometry/angles';
import { rackFormDepth, rootFormCurvature } from '@/lib/calc/gears/geometry/contact-ratio';
import { referenceDiameter } from '@/lib/calc/gears/geometry/diameters';
import * as pairs from '@/lib/calc/gears/geometry/pair';
import { undercutShift } from '@/lib/calc/gears/geometry/tooth-count';
import { workPair } from '../../reference/gears/pair';
import { degree, many, range, relative } from './draws';

describe('a pair', () => {
  it('worked from its shifts keeps the rack’s tip clearance, and gives its shifts back from its centre distance', () => {
    fc.assert(
      fc.property(
        range(12, 90),
        range(12, 90),
        range(-0.2, 0.6),
        range(-0.2, 0.6),
        range(0, 0.6),
        (z_1, z_2, x_1, x_2, beta) => {
          const g = { m_n: 1e-3, alpha_n: 20 * degree, beta, z_1, z_2, x_1, x_2 };
          const pair = workPair(g);
          expect(Number.isFinite(pair.alpha_wt)).toBe(true);
          const held = pairs.workingAngleFromCentreDistance.of(pair);
          const sum = pairs.shiftSumForAngle.of({ ...g, alpha_wt: held, alpha_t: pair.alpha_t });
          expect(Math.abs(sum - x_1 - x_2)).toBeLessThan(1e-7);
          const clearance = pair.a - pair.one.d_a / 2 - pair.two.d_f / 2;
          expect(relative(clearance, 0.25e-3)).toBeLessThan(1e-9);
          expect(relative(pair.one.d_w * Math.cos(pair.alpha_wt), pair.one.d_b)).toBeLessThan(1e-12);
        },
      ),
      many,
    );
  });
});

describe('undercut', () => {
  it('begins where the fillet of the standard rack reaches the base circle', () => {
    fc.assert(
      fc.property(range(6, 30), range(0, 0.6), (z, beta) => {
        const alpha_n = 20 * degree;
        const alpha_t = transversePressureAngle.of({ alpha_n, beta });
        const h_FfP = rackFormDepth.of({ h_fP: 1.25, rho_fP: 0.38, alpha_n });
        const x = undercutShift.of({ h_aP: h_FfP, z, beta, alpha_t });
        const d = referenceDiameter.of({ z, m_n: 1, beta });
        const at = (shift: number) => rootFormCurvature.of({ d, alpha_t, m_n: 1, h_FfP, x: shift });
        expect(at(x)).toBeCloseTo(0, 12);
        expect(at(x + 0.1)).toBeGreaterThan(0);
        expect(at(x - 0.1)).toBeLessThan(0);
      }),
      many,
    );
  });

  it('leaves the straight depth of the standard rack at one module', () => {
    // ISO 53:1998, basic rack A (from memory): common depth of rack and mating rack is 2 modules.
    expect(rackFormDepth.of({ h_fP: 1.25, rho_fP: 0.38, alpha_n: 20 * degree })).toBeCloseTo(1, 3);
  });
});

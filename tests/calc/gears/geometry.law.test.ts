/** Laws of the geometry of a pair: inverses come back, and undercut begins where the fillet reaches the base circle. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { baseHelixAngle, transversePressureAngle } from '@/lib/calc/gears/geometry/angles';
import {
  rackFormDepth,
  rootFormCurvature,
  virtualContactRatio,
} from '@/lib/calc/gears/geometry/contact-ratio';
import { referenceDiameter, tipClearance } from '@/lib/calc/gears/geometry/diameters';
import { overPinsOdd } from '@/lib/calc/gears/geometry/measurement';
import * as pairs from '@/lib/calc/gears/geometry/pair';
import {
  normalTipThickness,
  tipHelixAngle,
  tipPressureAngle,
  tipThickness,
  toothThickness,
  transverseToothThickness,
} from '@/lib/calc/gears/geometry/thickness';
import { undercutShift, virtualToothNumber } from '@/lib/calc/gears/geometry/tooth-count';
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
          const clearance = tipClearance.of({ a: pair.a, d_a: pair.one.d_a, d_f_mate: pair.two.d_f });
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

// Independent derivation: in its normal section a helical tooth is that of a spur gear with the virtual tooth number.
describe('a helical pair and its virtual spur pair', () => {
  it.each([10, 20, 30])(
    'have the same contact ratio and tip thickness at %i°, to one part in fifty',
    (angle) => {
      const g = { m_n: 1, alpha_n: 20 * degree, beta: angle * degree, z_1: 20, z_2: 40, x_1: 0.2, x_2: 0.1 };
      const helical = workPair(g);
      const beta_b = baseHelixAngle.of(g);
      const virtual = (z: number) => virtualToothNumber.of({ z, beta_b, beta: g.beta });
      const spur = workPair({ ...g, beta: 0, z_1: virtual(20), z_2: virtual(40) });
      const eps = virtualContactRatio.of({ eps_alpha: helical.eps_alpha, beta_b });
      expect(relative(eps, spur.eps_alpha)).toBeLessThan(0.02);

      const tip = (gear: typeof helical.one, alpha_t: number, beta: number) => {
        const s_t = transverseToothThickness.of({ s_n: toothThickness.of({ ...g, x: g.x_1 }), beta });
        const alpha_at = tipPressureAngle.of(gear);
        const s_at = tipThickness.of({ ...gear, s_t, alpha_t, alpha_at });
        return normalTipThickness.of({ s_at, beta_a: tipHelixAngle.of({ ...gear, beta }) });
      };
      const ofSpur = tip(spur.one, g.alpha_n, 0);
      expect(relative(tip(helical.one, helical.alpha_t, g.beta), ofSpur)).toBeLessThan(0.02);
    },
  );
});

describe('the size over pins of an odd gear', () => {
  // Independent derivation: the distance of two points on one circle, half a tooth short of opposite, and two pin radii.
  it('is the distance of pins that stand half a tooth short of opposite', () => {
    const g = { d_b: 20, phi_p: 0.45, d_p: 1.7, z: 21 };
    const radius = g.d_b / 2 / Math.cos(g.phi_p);
    const opposite = Math.PI - Math.PI / g.z;
    const apart = Math.hypot(radius * Math.cos(opposite) - radius, radius * Math.sin(opposite));
    expect(overPinsOdd.of(g)).toBeCloseTo(apart + g.d_p, 12);
  });
});

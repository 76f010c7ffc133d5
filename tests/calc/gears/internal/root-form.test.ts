/** The root of a ring taken as a rack: against that rack drawn point by point, and against real rings, which are stronger. */
import { describe, expect, it } from 'vitest';
import * as ring from '@/lib/calc/gears/internal/root-form';
import { flankPressure } from '@/lib/calc/gears/strength/flank-pressure';
import { formFactor, notchParameter, stressCorrection } from '@/lib/calc/gears/strength/form-factor';
import { degree, relative } from '../draws';
import { ringTooth } from './ring-tooth';

const alpha_n = 20 * degree;

function rack(rho_fP: number, alpha = alpha_n) {
  const g = { h_fP: 1.25, rho_fP, alpha_n: alpha, h_t2: 2.25 };
  const s_Fn = ring.ringRootChord.of(g);
  const h_Fa = ring.ringBendingArm.of(g);
  const Y_Fa = formFactor.of({ s_Fn, h_Fa, alpha_Fan: alpha, alpha_n: alpha });
  return { s_Fn, h_Fa, Y_Fa, stress: Y_Fa * notch(s_Fn, h_Fa, rho_fP) };
}

const notch = (s_Fn: number, h_Fa: number, rho_F: number) =>
  stressCorrection.of({ s_Fn, h_Fa, q_s: notchParameter.of({ s_Fn, rho_F }) });

describe('the rack that stands for a ring', () => {
  // DIN 3990-3:1987 (from memory): 2.053 to 2.06 for the standard basic rack.
  it('has the form factor 2.06 of the standard', () => {
    expect(rack(0.38).Y_Fa).toBeCloseTo(2.06, 2);
    expect(rack(0.15).Y_Fa).toBeCloseTo(2.05, 2);
  });

  // Independent derivation: a ring of a million teeth, drawn point by point, is that rack.
  it.each([0.15, 0.25, 0.38])('is the ring of endlessly many teeth, fillet %d', (fillet) => {
    const drawn = ringTooth({ z: 1e5, x: 0, alpha: alpha_n, fillet });
    const found = rack(fillet);
    expect(relative(found.s_Fn, drawn.s_Fn)).toBeLessThan(1e-3);
    expect(relative(found.h_Fa, drawn.h_Fa)).toBeLessThan(1e-3);
    expect(relative(found.Y_Fa, drawn.Y_Fa)).toBeLessThan(2e-3);
  });
});

describe('a real ring', () => {
  const rings = [
    { z: 40, x: 0.3 },
    { z: 48, x: 0 },
    { z: 48, x: 0.3 },
    { z: 60, x: 0.5 },
    { z: 72, x: -0.2 },
    { z: 100, x: 0.6 },
    { z: 200, x: 0 },
  ];

  // What makes the rack a safe stand-in: each real tooth is thicker at its foot, and the stress at its fillet is lower.
  it.each(rings.flatMap((g) => [0.15, 0.25, 0.38].map((fillet) => ({ ...g, fillet }))))(
    'of $z teeth shifted by $x with fillet $fillet bears its load with less stress than the rack',
    ({ z, x, fillet }) => {
      const drawn = ringTooth({ z, x, alpha: alpha_n, fillet });
      const safe = rack(fillet);
      expect(drawn.s_Fn).toBeGreaterThan(safe.s_Fn);
      expect(drawn.Y_Fa).toBeLessThan(safe.Y_Fa);
      const stress = drawn.Y_Fa * notch(drawn.s_Fn, drawn.h_Fa, fillet);
      expect(stress).toBeLessThan(safe.stress);
    },
  );

  it('with a sharper fillet is stressed more, so an unknown fillet is taken sharp', () => {
    expect(rack(0.15).stress).toBeGreaterThan(rack(0.25).stress);
    expect(rack(0.25).stress).toBeGreaterThan(rack(0.38).stress);
  });

  it('has the height between its circles', () => {
    expect(ring.ringToothHeight.of({ d_f2: 50.5e-3, d_a2: 46e-3, m_n: 1e-3 })).toBeCloseTo(2.25, 12);
  });
});

describe('a thin rim', () => {
  // ISO 6336-3:2006 (from memory): no effect from 3.5 modules behind a ring and 1.2 tooth heights below an external gear.
  it('raises the stress only below the limits of the standard, where its line starts at one', () => {
    expect(ring.ringRimFactor.of({ m_n: 1, s_R: 3.5 })).toBe(1);
    expect(ring.ringRimFactor.of({ m_n: 1, s_R: 3.4 })).toBeCloseTo(1.03, 2);
    expect(ring.ringRimFactor.of({ m_n: 1, s_R: 1.75 })).toBeCloseTo(1.79, 2);
    expect(ring.gearRimFactor.of({ h_t: 1, s_R: 1.2 })).toBeCloseTo(1, 3);
    expect(ring.gearRimFactor.of({ h_t: 1, s_R: 0.5 })).toBeCloseTo(2.4, 1);
    expect(ring.rimmedRootStress.of({ sigma_F: 10e6, Y_B: 1.5 })).toBe(15e6);
  });
});

describe('the flanks of an internal pair', () => {
  // Independent derivation: Hertz for the pinion's curvature inside the ring's, whose difference counts.
  it('press as a cylinder inside a hollow does when the ring counts negative', () => {
    const [z_1, z_2, m, b, F_t] = [20, 60, 1e-3, 10e-3, 200];
    const u = ring.internalGearRatio.of({ z_1, z_2 });
    const Z_E = 6e3;
    const Z_H = Math.sqrt(2 / (Math.cos(alpha_n) * Math.sin(alpha_n)));
    const found = flankPressure.of({ Z_H, Z_E, Z_eps: 1, Z_beta: 1, K_H: 1, F_t, b, d_1: z_1 * m, u });
    const curvature = (z: number) => 1 / (((z * m) / 2) * Math.sin(alpha_n));
    const F_n = F_t / Math.cos(alpha_n);
    const hertz = Z_E * Math.sqrt((F_n / b) * (curvature(z_1) - curvature(z_2)));
    expect(relative(found, hertz)).toBeLessThan(1e-9);
  });
});

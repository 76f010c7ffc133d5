/** Form factor and stress correction against teeth cut point by point by their rack: an independent derivation. */
import { describe, expect, it } from 'vitest';
import { baseHelixAngle } from '@/lib/calc/gears/geometry/angles';
import { virtualToothNumber } from '@/lib/calc/gears/geometry/tooth-count';
import { toothForm } from './form-factor-chain';
import { loadLine, thirtyDegreePoint } from './rack-generated-tooth';

const degree = Math.PI / 180;
const standard = { alpha_n: 20 * degree, h_fP: 1.25, rho_fP: 0.38 };

const gears = [
  { title: 'spur, 20 teeth', z: 20, x: 0, beta: 0, ...standard },
  { title: 'helical, 19 teeth at 20° (its virtual spur gear)', z: 19, x: 0, beta: 20 * degree, ...standard },
  { title: 'shifted, 13 teeth with x = +0.5', z: 13, x: 0.5, beta: 0, ...standard },
  { title: 'shifted, 40 teeth with x = −0.3', z: 40, x: -0.3, beta: 0, ...standard },
  {
    title: '25° rack with rounding 0.25, 24 teeth',
    z: 24,
    x: 0.1,
    beta: 0,
    alpha_n: 25 * degree,
    h_fP: 1.25,
    rho_fP: 0.25,
  },
];

describe.each(gears)('$title', (gear) => {
  const beta_b = baseHelixAngle.of(gear);
  const z_n = virtualToothNumber.of({ z: gear.z, beta_b, beta: gear.beta });
  const form = toothForm({ ...gear, z_n, d_a: 2 + 2 * gear.x, d: 0, m_n: 1 });

  const rack = { z: z_n, x: gear.x, alpha: gear.alpha_n, dedendum: gear.h_fP, tipRounding: gear.rho_fP };
  const root = thirtyDegreePoint(rack);
  const load = loadLine(rack, z_n / 2 + 1 + gear.x);
  const arm = load.height - root.height;

  it('has the chord, moment arm and fillet radius of the cut tooth', () => {
    expect(form.s_Fn).toBeCloseTo(root.chord, 5);
    expect(form.h_Fa).toBeCloseTo(arm, 5);
    expect(form.alpha_Fan).toBeCloseTo(load.angle, 6);
    expect(form.rho_F / root.radius).toBeCloseTo(1, 3);
  });

  it('has the form factor of the cut tooth within 0.05 %', () => {
    const cut = (6 * arm * Math.cos(load.angle)) / (root.chord ** 2 * Math.cos(gear.alpha_n));
    expect(Math.abs(form.Y_Fa / cut - 1)).toBeLessThan(0.0005);
  });

  it('has the stress correction that the cut tooth’s chord, arm and radius give, within 0.05 %', () => {
    const slim = root.chord / arm;
    const cut = (1.2 + 0.13 * slim) * (root.chord / (2 * root.radius)) ** (1 / (1.21 + 2.3 / slim));
    expect(Math.abs(form.Y_Sa / cut - 1)).toBeLessThan(0.0005);
  });
});

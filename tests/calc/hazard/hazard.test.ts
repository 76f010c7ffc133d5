/** Energy and stopping against steps of the test's own; separation at its two speeds. */
import { expect, it } from 'vitest';
import { separationDistance, touchForceLimit } from '@/lib/calc/hazard/contact';
import { effectiveMass, kineticEnergy, stoppingAngle, stopTorque, tipSpeed } from '@/lib/calc/hazard/energy';

it('stops where a step-by-step braking stops (independent)', () => {
  const g = { omega: 10, t_r: 0.05, J: 0.07, T_b: 6 };
  let angle = g.omega * g.t_r;
  const dt = 1e-6;
  for (let w = g.omega; w > 0; w -= (g.T_b / g.J) * dt) angle += (w - (g.T_b / g.J) * (dt / 2)) * dt;
  expect(stoppingAngle.of(g)).toBeCloseTo(angle, 4);
});

it('reaches the peak torque at a springy stop that a stepped swing reaches (independent)', () => {
  const g = { omega: 5, J: 0.1, c: 400 };
  let angle = 0;
  let w = g.omega;
  const dt = 1e-6;
  while (w > 0) {
    w -= ((g.c * angle) / g.J) * dt;
    angle += w * dt;
  }
  expect(stopTorque.of(g) / (g.c * angle)).toBeCloseTo(1, 3);
});

it('has at the tip the mass that carries all the energy', () => {
  const g = { J_L: 0.02, N: 60, J_m: 1.35e-5, r: 0.3 };
  const v = tipSpeed.of({ omega: 10.472, r: g.r });
  const whole =
    kineticEnergy.of({ J: g.J_L, omega: 10.472 }) + kineticEnergy.of({ J: g.J_m, omega: 60 * 10.472 });
  expect((effectiveMass.of(g) * v ** 2) / 2).toBeCloseTo(whole, 9);
});

it('keeps at least 100 mm, and never less than 500 mm once the slower speed applies (ISO 13855, from memory)', () => {
  expect(separationDistance(0.01, 0.014)).toBe(0.1);
  expect(separationDistance(0.25, 0.014)).toBeCloseTo(0.5, 12);
  // 2 m/s would ask 520 mm; 1.6 m/s asks 416 mm; the floor of 500 mm holds.
  expect(separationDistance(0.26, 0.014)).toBe(0.5);
});

it('lets pressure hold on a small area and force on a large one', () => {
  const g = { F_max: 150, p_max: 50e4 };
  expect(touchForceLimit.of({ ...g, A_c: 2e-4 })).toBeCloseTo(100, 9);
  expect(touchForceLimit.of({ ...g, A_c: 9e-4 })).toBe(150);
});

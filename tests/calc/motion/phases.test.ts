// The demanded move point by point: against the formulas of its phases and the mean of its torque.
import { describe, expect, it } from 'vitest';
import { brakeTorque, drivingLoad, rampTorque, swingTorque } from '@/lib/calc/motion/demand';
import type { MovedLoad } from '@/lib/calc/motion/least-time';
import type { MotorMap } from '@/lib/calc/motion/motor-map';
import { askedTorque, movePoints, worstPoints } from '@/lib/calc/motion/phases';
import { moveProfiles } from '@/lib/calc/motion/profiles';

const moved: MovedLoad = {
  ratio: 40,
  efficiency: 0.9,
  inertia: 1.5,
  load: 6,
  dryFriction: 0.4,
  viscousFriction: 0.8,
};
const run = { phi: 1.2, t: 0.9 };

describe.each(['trapezoid', 'triangle', 'cosine'] as const)('a %s move', (name) => {
  const profile = moveProfiles[name];
  const [speed, acceleration] = [profile.speed.of(run), profile.acceleration.of(run)];
  const points = movePoints(name, { speed, acceleration, t: run.t });

  it('covers its angle in its time', () => {
    let angle = 0;
    for (const [i, p] of points.entries()) {
      const before = points[i - 1] ?? p;
      angle += ((p.speed + before.speed) / 2) * (p.time - before.time);
    }
    expect(angle / run.phi).toBeCloseTo(1, 2);
    expect(points.at(-1)?.time).toBeCloseTo(run.t, 12);
  });

  it('asks at most for what the formula of its rise gives', () => {
    const g = { T_L: 6, T_dry: 0.4, b: 0.8, omega: speed, J_out: 1.5, alpha: acceleration };
    const formula = name === 'cosine' ? swingTorque : rampTorque;
    const greatest = Math.max(...points.map((p) => askedTorque(moved, p)));
    expect(greatest / formula.of(g)).toBeGreaterThan(0.995);
    expect(greatest).toBeLessThanOrEqual(formula.of(g) + 1e-9);
  });

  it('made with the load is braked with at most what the formula gives', () => {
    const greatest = Math.max(...points.map((p) => -askedTorque({ ...moved, load: -6 }, p)));
    const formula = brakeTorque.of({ T_back: 6, T_dry: 0.4, J_out: 1.5, alpha: acceleration });
    expect(greatest).toBeCloseTo(formula, 9);
  });
});

describe('the worst point', () => {
  const falling: MotorMap = {
    speeds: [0, 100, 200],
    driving: [1, 1, 0],
    brakingAbove: [1, 0.5, 0.5],
    brakingBelow: [1, 1, 0.5],
  };

  it('is where given over asked is least, by hand', () => {
    // 40 × 0.9 × 1 N·m = 36 N·m up to 2.5 rad/s, then falling to nothing at 5 rad/s: half of it at 3.75 rad/s.
    const points = [
      { time: 0, speed: 2, acceleration: 4 },
      { time: 1, speed: 3.75, acceleration: 1 },
      { time: 2, speed: 3, acceleration: -8 },
    ];
    const { driving, braking } = worstPoints(falling, moved, points);
    expect(driving).toMatchObject({ speed: 3.75 });
    expect(driving?.given).toBeCloseTo(18, 9);
    expect(driving?.asked).toBeCloseTo(1.5 + 6.4 + 0.8 * 3.75, 9);
    expect(braking?.given).toBeCloseTo(40 * 0.5, 9);
    expect(braking?.asked).toBeCloseTo(8 * 1.5 - 6.4 - 0.8 * 3, 9);
  });

  it('gives nothing beyond the greatest speed', () => {
    const { driving } = worstPoints(falling, moved, [{ time: 0, speed: 5.1, acceleration: 0 }]);
    expect(driving?.given).toBe(0);
  });
});

it('holds itself below an efficiency of a half, and feels the whole load without friction', () => {
  expect(drivingLoad.of({ T_L: 10, eta: 1 })).toBe(10);
  expect(drivingLoad.of({ T_L: 10, eta: 0.8 })).toBeCloseTo(7.5, 12);
  expect(drivingLoad.of({ T_L: 10, eta: 0.4 })).toBe(0);
});

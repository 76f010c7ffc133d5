// The move of least time where kinematics alone gives it, and what any such move must obey.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fastestMove, fastestMoveSpeed } from '@/lib/calc/motion/duty';
import { fastestRatio, slowerTime } from '@/lib/calc/motion/fastest-ratio';
import { leastMove, type MovedLoad } from '@/lib/calc/motion/least-time';
import { brakingTorque, type MotorMap, motorMap } from '@/lib/calc/motion/motor-map';

/** A motor that gives and takes 0.4 N m at any speed up to 500 rad/s. */
const even: MotorMap = {
  speeds: [0, 200, 500],
  driving: [0.4, 0.4, 0.4],
  brakingAbove: [0.4, 0.4, 0.4],
  brakingBelow: [0.4, 0.4, 0.4],
};

const moved: MovedLoad = {
  ratio: 50,
  efficiency: 1,
  inertia: 2,
  load: 0,
  dryFriction: 0,
  viscousFriction: 0,
};

const actuator = {
  speedConstant: 20,
  resistance: 0.06,
  noLoadCurrent: 0.8,
  ratio: 1,
  trainEfficiency: 1,
  driveEfficiency: 0.95,
  motorCurrentLimit: 30,
  batteryCurrentLimit: 20,
};
const supply = { openVoltage: 24, resistance: 0.03 };
const map = motorMap(actuator, supply, 150);

const load = fc.record({
  ratio: fc.double({ min: 5, max: 200, noNaN: true }),
  efficiency: fc.double({ min: 0.4, max: 1, noNaN: true }),
  inertia: fc.double({ min: 0.05, max: 20, noNaN: true }),
  load: fc.double({ min: -20, max: 20, noNaN: true }),
  dryFriction: fc.double({ min: 0, max: 3, noNaN: true }),
  viscousFriction: fc.double({ min: 0, max: 2, noNaN: true }),
});
const angles = fc.double({ min: 0.01, max: 30, noNaN: true });

describe('a move under one torque at all speeds', () => {
  it('takes the time of the triangle or trapezoid of kinematics', () => {
    // 50 × 0.4 N·m on 2 kg·m² are 10 rad/s²; the greatest speed is 10 rad/s, reached after 10 rad.
    for (const phi of [0.3, 4, 9.99, 10.01, 60]) {
      const limits = { phi, omega_lim: 10, alpha_lim: 10 };
      const found = leastMove(even, moved, phi);
      expect(found?.time).toBeCloseTo(fastestMove.of(limits), 8);
      expect(found?.peakSpeed).toBeCloseTo(fastestMoveSpeed.of(limits), 8);
    }
  });

  it('rises slower than it brakes where the load holds it back: √(2φ(1/a + 1/b))', () => {
    const found = leastMove(even, { ...moved, load: 4, dryFriction: 1 }, 3);
    const [a, b] = [(20 - 5) / 2, (20 + 5) / 2];
    expect(found?.time).toBeCloseTo(Math.sqrt(2 * 3 * (1 / a + 1 / b)), 9);
    expect(found?.peakSpeed).toBeCloseTo(Math.sqrt((2 * 3 * a * b) / (a + b)), 9);
  });

  it('nears the speed at which viscous friction takes all, and never passes it', () => {
    // 20 N·m over 4 N·m·s/rad: 5 rad/s, half the greatest speed of the motor.
    const found = leastMove(even, { ...moved, viscousFriction: 4 }, 200);
    expect(found?.peakSpeed).toBeCloseTo(5, 6);
    expect(found?.peakSpeed).toBeLessThan(5);
  });
});

describe('a move that cannot be made', () => {
  it('is one whose load the motor cannot start', () => {
    expect(leastMove(even, { ...moved, load: 20.1 }, 1)).toBeNull();
    expect(leastMove(even, { ...moved, load: 19.9 }, 1)).not.toBeNull();
  });

  it('is one whose load the motor cannot stop', () => {
    expect(leastMove(even, { ...moved, load: -20.1 }, 1)).toBeNull();
    expect(leastMove(even, { ...moved, load: -19.9 }, 1)).not.toBeNull();
  });
});

describe('what may flow back', () => {
  it('bounds the braking current so that emf times current less copper loss stays within it', () => {
    for (const returned of [0, 20, 150])
      for (let speed = 1; speed < 480; speed += 7) {
        const I = brakingTorque(actuator, returned, speed) * actuator.speedConstant - actuator.noLoadCurrent;
        const power = (speed / actuator.speedConstant) * I - actuator.resistance * I ** 2;
        expect(power).toBeLessThanOrEqual(returned + 1e-9);
        expect(I).toBeLessThanOrEqual(30 + 1e-9);
      }
  });

  it('leaves the whole current at low speed, where the winding burns all of it', () => {
    // 30 A through 0.06 Ω take 1.8 V: up to 36 rad/s nothing flows back.
    expect(brakingTorque(actuator, 0, 35.9) * 20).toBeCloseTo(30.8, 9);
    expect(brakingTorque(actuator, 0, 36.1) * 20).toBeCloseTo(0.8, 9);
  });
});

describe('any move of least time', () => {
  it('starts and ends at rest, covers its angle and runs through its times in order', () => {
    fc.assert(
      fc.property(load, angles, (m, angle) => {
        const found = leastMove(map, m, angle);
        if (found === null) return;
        const { course } = found;
        expect([course[0]?.speed, course.at(-1)?.speed]).toEqual([0, 0]);
        expect(course.at(-1)?.time).toBeCloseTo(found.time, 9);
        let below = 0;
        for (const [i, p] of course.entries()) {
          const before = course[i - 1];
          if (before === undefined) continue;
          expect(p.time).toBeGreaterThanOrEqual(before.time);
          // Between two speeds the angle lies between what the lesser and the greater cover.
          below += (p.time - before.time) * Math.min(p.speed, before.speed);
        }
        expect(below).toBeLessThanOrEqual(angle * (1 + 1e-6));
      }),
      { seed: 5, numRuns: 200 },
    );
  });

  it('takes no less time for a longer way or a heavier body', () => {
    const time = (m: MovedLoad, angle: number) => leastMove(map, m, angle)?.time ?? Number.POSITIVE_INFINITY;
    fc.assert(
      fc.property(load, angles, (m, angle) => {
        const now = time(m, angle) * (1 - 1e-9);
        expect(time(m, angle * 1.1)).toBeGreaterThanOrEqual(now);
        expect(time({ ...m, inertia: m.inertia * 1.1 }, angle)).toBeGreaterThanOrEqual(now);
      }),
      { seed: 6, numRuns: 200 },
    );
  });
});

describe('the fastest ratio', () => {
  const geared = {
    efficiency: 0.9,
    loadInertia: 1,
    rotorInertia: 1e-5,
    against: 6,
    along: 5,
    dryFriction: 0.3,
    viscousFriction: 0.05,
  };

  it('is as fast as any ratio tried one by one', () => {
    const { best, lost } = fastestRatio(map, geared, 120, 2, 9);
    let least = Number.POSITIVE_INFINITY;
    for (let N = 20; N < 720; N *= 1.01)
      least = Math.min(least, slowerTime(map, geared, N, 2) ?? Number.POSITIVE_INFINITY);
    expect((best?.time ?? 0) / least).toBeLessThan(1.002);
    expect(lost).toBeCloseTo((slowerTime(map, geared, 120, 2) ?? 0) / (best?.time ?? 1) - 1, 12);
  });

  it('is that of equal inertias for one torque at all speeds without load, √(J_L/J_m)', () => {
    const free = { ...geared, efficiency: 1, against: 0, along: 0, dryFriction: 0, viscousFriction: 0 };
    const slow = { ...even, speeds: [0, 2e4, 5e4] };
    const { best } = fastestRatio(slow, free, 200, 0.5, 9);
    expect(best?.ratio ?? 0).toBeGreaterThan(Math.sqrt(1e5) * 0.97);
    expect(best?.ratio ?? 0).toBeLessThan(Math.sqrt(1e5) * 1.03);
  });
});

describe('the map of a motor', () => {
  it('rises from rest in distinct speeds, whatever the limits, and gives no negative torque', () => {
    fc.assert(
      fc.property(
        fc.record({
          I: fc.double({ min: 0.1, max: 200, noNaN: true }),
          U: fc.double({ min: 0, max: 60, noNaN: true }),
          R_s: fc.constantFrom(0, 0.01, 0.2),
          battery: fc.constantFrom(undefined, 0.5, 20),
          returned: fc.constantFrom(0, 10, 1e6),
          dutyLimit: fc.constantFrom(undefined, 0.1, 1),
          maxSpeed: fc.constantFrom(undefined, 5, 1e4),
        }),
        ({ I, U, R_s, battery, returned, dutyLimit, maxSpeed }) => {
          const limits = {
            ...actuator,
            motorCurrentLimit: I,
            batteryCurrentLimit: battery,
            dutyLimit,
            maxSpeed,
          };
          const found = motorMap(limits, { openVoltage: U, resistance: R_s }, returned);
          expect(found.speeds[0]).toBe(0);
          for (const [i, speed] of found.speeds.entries()) {
            if (i > 0) expect(speed).toBeGreaterThan(found.speeds[i - 1] ?? Number.NaN);
            for (const torques of [found.driving, found.brakingAbove, found.brakingBelow])
              expect(torques[i]).toBeGreaterThanOrEqual(0);
          }
        },
      ),
      { seed: 7, numRuns: 200 },
    );
  });
});

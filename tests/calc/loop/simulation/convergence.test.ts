/** Half the step changes little: what the step of 50 µs, and the coarser one of the faults, cost in exactness. */
import { describe, expect, it } from 'vitest';
import { type Metrics, metricsOf } from '@/lib/calc/loop/simulation/metrics';
import { simulate } from '@/lib/calc/loop/simulation/simulate';
import type { Controller, DriveKind, Plant, Run } from '@/lib/calc/loop/simulation/types';
import { actuator, positioner } from './systems';

const target = { kind: 'step' as const, at: 0.05, from: 0, to: 0.8 };
const run = (innerStep: number, duration = 2): Run => ({
  duration,
  innerStep,
  target,
  start: { angle: 0 },
  seed: 3,
  samples: 2001,
});

const full: Readonly<Record<DriveKind, number>> = { duty: 1, speed: 700, current: 30 };
function loop(kind: DriveKind): Controller {
  const gains = kind === 'current' ? { kp: 3, ki: 2, kd: 0.5 } : {};
  return { ...positioner, ...gains, drive: { ...positioner.drive, kind, full: full[kind] } };
}

// Teeth that a stiffness of a steel train joins to a light output: their swing is near the end of what a step resolves.
const stiff: Plant = {
  ...actuator,
  train: { ...actuator.train, stiffness: 40_000, damping: 4 },
  load: { ...actuator.load, inertia: 0.05 },
};

function near(a: Metrics, b: Metrics, share: number, angle: number): void {
  expect(Math.abs((a.rise ?? 0) / (b.rise ?? 1) - 1)).toBeLessThan(share);
  expect(Math.abs(a.overshoot - b.overshoot) * 0.8).toBeLessThan(angle);
  expect(Math.abs(a.restError - b.restError)).toBeLessThan(angle);
  expect(Math.abs(a.swing - b.swing)).toBeLessThan(angle);
  expect(Math.abs(a.toothTorque / b.toothTorque - 1)).toBeLessThan(share);
  expect(Math.abs(a.current / b.current - 1)).toBeLessThan(share);
}

describe('half the step', () => {
  for (const kind of ['duty', 'speed', 'current'] as const) {
    it(`changes rise, torque and current by less than 1 %, angles by less than 0.4 mrad, for a ${kind} drive`, () => {
      const at = (h: number) => metricsOf(simulate(actuator, loop(kind), run(h)), target);
      near(at(5e-5), at(2.5e-5), 0.01, 4e-4);
    });
  }

  it('changes them by less than 2 % on a stiff train', () => {
    const at = (h: number) => metricsOf(simulate(stiff, loop('duty'), run(h)), target);
    near(at(5e-5), at(2.5e-5), 0.02, 4e-4);
  });

  it('changes the peaks of a blow on the stop by less than 2 %, from the coarse step of the faults too', () => {
    const away = { kind: 'hold' as const, angle: 100 };
    const blow = (plant: Plant, h: number) =>
      simulate(plant, loop('duty'), { ...run(h, 0.5), target: away }).peaks;
    for (const [plant, h] of [
      [actuator, 5e-5],
      [actuator, 2e-4],
      [stiff, 5e-5],
    ] as const) {
      const coarse = blow(plant, h);
      const fine = blow(plant, h / 2);
      expect(Math.abs(coarse.toothTorque / fine.toothTorque - 1)).toBeLessThan(0.02);
      expect(Math.abs(coarse.speed / fine.speed - 1)).toBeLessThan(0.02);
    }
  });

  it('takes the error of the free path down with the square of the step', () => {
    const still: Controller = { ...loop('duty'), kp: 3, ki: 0, kd: 0, period: 2e-3, rampTime: 0 };
    const smooth: Plant = {
      ...actuator,
      motor: { ...actuator.motor, dragTorque: 0 },
      supply: { ...actuator.supply, motorCurrentLimit: Number.POSITIVE_INFINITY },
      train: { stiffness: 3000, damping: 1, backlash: 0, efficiency: 1 },
      load: { ...actuator.load, dryFriction: 0 },
    };
    const quiet = { ...still, sensor: { ...still.sensor, noise: 0, quantum: 0 }, deadBand: 0, latency: 0 };
    const end = (h: number) => simulate(smooth, quiet, run(h, 0.3)).output.at(-1) ?? 0;
    const exact = end(1.25e-5);
    const ratio = Math.abs(end(2e-4) - exact) / Math.abs(end(1e-4) - exact);
    expect(ratio).toBeGreaterThan(3);
    expect(ratio).toBeLessThan(5.5);
  });
});

it('two seconds in steps of 50 µs take some milliseconds', () => {
  const times: number[] = [];
  for (let i = 0; i < 15; i += 1) {
    const before = performance.now();
    simulate(actuator, loop('duty'), run(5e-5));
    times.push(performance.now() - before);
  }
  // At rest some 5 ms; the bound holds on a busy machine too.
  expect(Math.min(...times)).toBeLessThan(40);
});

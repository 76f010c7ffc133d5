/** Simulated faults against what energy and Newton's law allow. */
import { describe, expect, it } from 'vitest';
import { type FaultRun, reaction, workFault } from '@/lib/calc/loop/faults';
import { simulate } from '@/lib/calc/loop/simulation/simulate';
import type { Controller, Fault, Plant } from '@/lib/calc/loop/simulation/types';
import { actuator, ideal, plain, positioner } from './simulation/systems';

const rotor = ideal.motor.inertia * ideal.ratio ** 2;
const run = (
  scene: FaultRun['scene'],
  make?: (at: number) => Fault,
  way: Partial<FaultRun> = {},
): FaultRun => ({
  fault: make?.(0).kind ?? null,
  scene,
  speed: -1,
  call: -0.8,
  ...(make === undefined ? {} : { make }),
  ...way,
});
const current: Controller = {
  ...plain,
  kp: 20,
  kd: 1,
  outputLimit: 1,
  drive: { ...plain.drive, kind: 'current', full: 20 },
};

describe('a supply that is cut', () => {
  it('lets an arm without friction fall as a pendulum does', () => {
    const heavy: Plant = { ...ideal, load: { ...ideal.load, gravityTorque: 9 } };
    const { soon, moved } = workFault(
      heavy,
      current,
      run('holding', (at) => ({ kind: 'supplyCut', at })),
      undefined,
    );
    // θ'' = −T_g cos θ / J from rest at θ = 0, by small steps of an independent integration.
    let [angle, speed] = [0, 0];
    const fallen: number[] = [];
    for (let n = 0; n < 5000; n += 1) {
      const acceleration = (-9 * Math.cos(angle + (speed * 1e-4) / 2)) / (rotor + 0.3);
      angle += 1e-4 * speed + 0.5e-8 * acceleration;
      speed += 1e-4 * acceleration;
      fallen.push(-angle);
    }
    expect(Math.abs(soon / (fallen[1999] ?? 0) - 1)).toBeLessThan(0.02);
    expect(Math.abs(moved / (fallen[4999] ?? 0) - 1)).toBeLessThan(0.02);
  });

  it('drops nothing that friction or a locking train holds', () => {
    const held: Plant = { ...actuator, train: { ...actuator.train, efficiency: 0.4 } };
    const { moved } = workFault(
      held,
      positioner,
      run('holding', (at) => ({ kind: 'supplyCut', at })),
      undefined,
    );
    expect(moved).toBeLessThan(5e-3);
  });
});

describe('a jam', () => {
  it('puts the rotor’s energy into the train, and what the motor adds', () => {
    const { result, moved } = workFault(
      {
        ...ideal,
        supply: { ...ideal.supply, motorCurrentLimit: 5 },
        train: { ...ideal.train, damping: 2 },
      },
      { ...current, kp: 5, kd: 0.2 },
      run('moving', (at) => ({ kind: 'jam', at })),
      undefined,
    );
    const blow = result.peaks.speed * Math.sqrt(3000 * rotor);
    expect(moved).toBe(0);
    expect(result.peaks.toothTorque).toBeGreaterThan(0.7 * blow);
    // A torque that pushes on while the train winds up counts twice at most.
    expect(result.peaks.toothTorque).toBeLessThan(1.02 * (blow + 2 * 5 * 0.03 * 100));
  });
});

describe('feedback', () => {
  const lost = run('holding', (at) => ({ kind: 'feedbackReads', at, angle: 3 }));

  it('that reads its end drives the output off with all the torque there is, no faster', () => {
    const free: Plant = { ...ideal, supply: { ...ideal.supply, motorCurrentLimit: 20 } };
    const { soon, result } = workFault(free, current, lost, undefined);
    const most = (20 * 0.03 * 100) / (rotor + 0.3);
    expect(soon).toBeLessThan(1.1 * 0.5 * most * reaction ** 2);
    expect(soon).toBeGreaterThan(0.8 * Math.min(0.5 * most * reaction ** 2, (24 / 3) * reaction));
    expect(result.peaks.speed).toBeLessThan(1.3 * (24 / 3));
  });

  it('that leaves its range trips a loop which watches that, at the next sample', () => {
    const watching = { ...positioner, watch: { ...positioner.watch, low: -2.5, high: 2.5 } };
    const watched = workFault(actuator, watching, lost, undefined);
    const blind = workFault(actuator, positioner, lost, undefined);
    expect(watched.trip).toBeLessThanOrEqual(2e-3);
    expect(watched.soon).toBeLessThan(blind.soon / 2);
    expect(blind.trip).toBeNull();
  });

  it('that stands still is found by a watch on the rate, or by the following limit after its time', () => {
    const frozen = run('moving', (at) => ({ kind: 'feedbackFrozen', at }));
    const rate = { ...positioner, watch: { ...positioner.watch, stillTime: 0.05, stillCommand: 0.1 } };
    const limit = { ...positioner, followingLimit: 0.15, followingTime: 0.08 };
    const [byRate, byLimit, blind] = [rate, limit, positioner].map((c) =>
      workFault(actuator, c, frozen, undefined),
    );
    expect(byRate?.trip).toBeGreaterThan(0.049);
    expect(byRate?.trip).toBeLessThan(0.07);
    expect(byLimit?.trip).toBeGreaterThan(0.079);
    expect(byLimit?.trip).toBeLessThan(0.35);
    expect(blind?.trip).toBeNull();
    for (const seen of [byRate, byLimit]) expect(seen?.moved).toBeLessThan(blind?.moved ?? 0);
  });

  it('that counts the other way runs the loop into the stop it was called towards, and says when the tip had gone its way', () => {
    const reversed = run('called', (at) => ({ kind: 'sensorReversed', at }));
    const { stop, tip, result } = workFault(actuator, positioner, reversed, 0.2);
    expect(result.output.at(-1) ?? 0).toBeLessThan(-1.8);
    expect(stop ?? 0).toBeGreaterThan(tip ?? 1);
    const i = Math.round((tip ?? 0) / 2.5e-3);
    expect(Math.abs(result.output[i] ?? 0)).toBeGreaterThan(0.17);
    expect(Math.abs(result.output[i] ?? 0)).toBeLessThan(0.23);
  });
});

describe('a command that is lost', () => {
  const lost = (then: 'coast' | 'brake' | 'hold' | 'last', timeout: number) =>
    workFault(
      actuator,
      positioner,
      run('moving', (at) => ({ kind: 'commandLost', at, timeout, then })),
      undefined,
    );

  it('moves the output least where it is held, and the further the longer nobody notices', () => {
    expect(lost('hold', 0.05).moved).toBeLessThan(lost('coast', 0.05).moved);
    expect(lost('brake', 0.05).moved).toBeLessThan(lost('brake', 0.2).moved);
    expect(lost('brake', 0.2).moved).toBeLessThan(lost('last', 0).moved);
  });
});

describe('any fault', () => {
  const cases: readonly (readonly [FaultRun['scene'], number, Fault])[] = [
    ['called', -0.8, { kind: 'sensorReversed', at: 0 }],
    ['holding', 0, { kind: 'feedbackReads', at: 0, angle: 3 }],
    ['holding', 0, { kind: 'supplyCut', at: 0 }],
  ];
  it.each(cases)(
    'comes out the same in a quarter of its steps, within 2 %% (%s, %d)',
    (scene, angle, fault) => {
      const { result, moved } = workFault(
        actuator,
        positioner,
        run(scene, () => fault),
        undefined,
      );
      const fine = simulate(actuator, positioner, {
        duration: 0.5,
        innerStep: result.innerStep / 4,
        target: { kind: 'hold', angle },
        start: { angle: 0 },
        seed: 1,
        samples: 11,
        fault,
      });
      expect(result.innerStep).toBeGreaterThan(1.5e-4);
      expect(Math.abs(result.peaks.speed / fine.peaks.speed - 1)).toBeLessThan(0.02);
      expect(Math.abs(moved / fine.peaks.moved - 1)).toBeLessThan(0.02);
      expect(Math.abs(result.peaks.toothTorque / fine.peaks.toothTorque - 1)).toBeLessThan(0.02);
    },
  );
});

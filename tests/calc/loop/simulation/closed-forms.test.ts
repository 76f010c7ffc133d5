/** The simulation against closed forms: one motion at a time, each with a formula of its own. */
import { describe, expect, it } from 'vitest';
import { overshoot, peakTime, riseTime } from '@/lib/calc/loop/second-order';
import { metricsOf } from '@/lib/calc/loop/simulation/metrics';
import { simulate } from '@/lib/calc/loop/simulation/simulate';
import type { Plant, Result, Run } from '@/lib/calc/loop/simulation/types';
import { ideal, plain } from './systems';

const rotorInertia = ideal.motor.inertia * ideal.ratio ** 2;
const inertia = ideal.load.inertia + rotorInertia;
const free: Omit<Run, 'duration'> = {
  target: { kind: 'hold', angle: 0 },
  start: { angle: 0 },
  seed: 1,
  samples: 20_001,
  free: true,
};

function loaded(plant: Plant, load: Partial<Plant['load']>): Plant {
  return { ...plant, load: { ...plant.load, ...load } };
}

/** Hz, from the upward crossings of the mean. */
function frequencyOf(result: Result, values: Float64Array): number {
  const mean = values.reduce((a, b) => a + b, 0) / values.length;
  const times: number[] = [];
  for (let i = 1; i < values.length; i += 1) {
    const before = (values[i - 1] ?? 0) - mean;
    const after = (values[i] ?? 0) - mean;
    if (before >= 0 || after < 0) continue;
    const t = result.time[i - 1] ?? 0;
    times.push(t + ((result.time[i] ?? 0) - t) * (before / (before - after)));
  }
  return (times.length - 1) / ((times.at(-1) ?? 0) - (times[0] ?? 0));
}

describe('swinging of the two masses', () => {
  // ω = √(k (1/J_m + 1/J_o)): two masses on a spring, any text on vibration.
  it('is at the frequency of two free masses', () => {
    const result = simulate(loaded(ideal, { externalTorque: 30 }), plain, { ...free, duration: 1 });
    const exact = Math.sqrt(3000 * (1 / rotorInertia + 1 / 0.3)) / (2 * Math.PI);
    expect(frequencyOf(result, result.toothTorque) / exact).toBeCloseTo(1, 4);
  });

  it('is at the frequency of the output alone where the rotor is held', () => {
    const held: Plant = { ...ideal, motor: { ...ideal.motor, dragTorque: 1e6 } };
    const result = simulate(held, plain, { ...free, duration: 1, start: { angle: 0, speed: 0.5 } });
    const exact = Math.sqrt(3000 / 0.3) / (2 * Math.PI);
    expect(frequencyOf(result, result.output) / exact).toBeCloseTo(1, 4);
    expect(result.peaks.toothTorque).toBeCloseTo(0.5 * Math.sqrt(3000 * 0.3), 3);
  });

  it('keeps its energy and stays bounded on a train a thousand times as stiff as the step resolves', () => {
    const stiff: Plant = { ...ideal, train: { ...ideal.train, stiffness: 1e9 } };
    const result = simulate(loaded(stiff, { externalTorque: 30 }), plain, { ...free, duration: 1 });
    const alpha = 30 / inertia;
    expect(result.output.at(-1) ?? 0).toBeCloseTo(alpha / 2, 5);
  });
});

describe('friction', () => {
  // ½ J ω² = T φ: energy balance.
  it('stops a coasting output after the angle that its energy lasts', () => {
    const result = simulate(loaded(ideal, { dryFriction: 4 }), plain, {
      ...free,
      duration: 2,
      start: { angle: 0, speed: 2 },
    });
    expect(result.output.at(-1) ?? 0).toBeCloseTo((inertia * 4) / 2 / 4, 3);
    expect(result.speed.at(-1)).toBe(0);
  });

  it('lets a viscous output run the angle J ω / b', () => {
    const result = simulate(loaded(ideal, { viscousFriction: 3 }), plain, {
      ...free,
      duration: 4,
      start: { angle: 0, speed: 2 },
    });
    expect(result.output.at(-1) ?? 0).toBeCloseTo((inertia * 2) / 3, 4);
  });

  it('holds an output at rest to the last bit just below breakaway, and lets it go just above', () => {
    const at = (externalTorque: number) => {
      const motor = { ...ideal.motor };
      const plant = loaded({ ...ideal, motor }, { dryFriction: 4, breakaway: 1.5, externalTorque });
      // The train starts wound up by what pulls beyond dry friction: the rotor gives way at once.
      return simulate(plant, plain, { ...free, duration: 0.5 });
    };
    expect(at(3.99).peaks.moved).toBe(0);
    expect(at(6.2).peaks.moved).toBeGreaterThan(0.01);
  });

  it('holds against gravity until the torque passes breakaway, by the angle where it does', () => {
    // Driven slowly by a current that grows with the error: the output lets go at the current of breakaway.
    const plant = loaded(ideal, { dryFriction: 5, breakaway: 1.6 });
    const ramp: Run = {
      ...free,
      free: false,
      duration: 1,
      target: { kind: 'points', times: [0, 1], angles: [0, 1] },
    };
    const creep = { ...plain, drive: { ...plain.drive, kind: 'current' as const, full: 4 } };
    const result = simulate(plant, creep, ramp);
    const perAmpere = ideal.motor.torqueConstant * ideal.ratio;
    const when = result.time.find((_, i) => (result.output[i] ?? 0) > 0) ?? 0;
    // The rotor winds the spring up by k·φ, which the torque of the motor balances.
    expect(when * 4 * perAmpere).toBeGreaterThan(8 * 0.97);
    expect(when * 4 * perAmpere).toBeLessThan(8 * 1.03);
  });
});

describe('losses of the train', () => {
  const lossy = (efficiency: number): Plant => ({
    ...ideal,
    train: { ...ideal.train, damping: 5, efficiency },
  });
  const current = { ...plain, drive: { ...plain.drive, kind: 'speed' as const, full: 100 } };

  it('ask of the motor the torque over the efficiency when it lifts', () => {
    const plant = loaded(lossy(0.75), { externalTorque: -20 });
    const up: Run = { ...free, free: false, duration: 2, target: { kind: 'hold', angle: 1e3 } };
    const result = simulate(plant, { ...current, outputLimit: 1 }, up);
    expect((result.current.at(-1) ?? 0) * 3).toBeCloseTo(20 / 0.75, 2);
  });

  it('help it as much when the load drives back: 2 − 1/η of the torque is left', () => {
    const plant = loaded(lossy(0.75), { externalTorque: -20 });
    const down: Run = { ...free, free: false, duration: 2, target: { kind: 'hold', angle: -1e3 } };
    const result = simulate(plant, { ...current, outputLimit: 1 }, down);
    expect((result.current.at(-1) ?? 0) * 3).toBeCloseTo(20 * (2 - 1 / 0.75), 2);
  });

  it('hold the load without any current where less than half gets through', () => {
    const run: Run = { ...free, duration: 1 };
    const at = (efficiency: number) =>
      simulate(loaded(lossy(efficiency), { externalTorque: -20 }), plain, run);
    expect(at(0.45).peaks.moved).toBeLessThan(0.02);
    expect(at(0.55).peaks.moved).toBeGreaterThan(0.2);
  });
});

describe('motor and supply', () => {
  const forward: Run = { ...free, free: false, duration: 2, target: { kind: 'hold', angle: 1e6 } };
  const duty = { ...plain, outputLimit: 1 };

  it('run up to the no-load speed with the time constant J R / K_t²', () => {
    const result = simulate(ideal, duty, forward);
    const perAmpere = 0.03 * 100;
    const end = 24 / perAmpere;
    const tau = (inertia * 0.1) / perAmpere ** 2;
    expect(result.rotorSpeed.at(-1) ?? 0).toBeCloseTo(end, 6);
    // The masses swing about their common speed: the angle run through tells it better.
    expect(result.output.at(-1) ?? 0).toBeCloseTo(end * (2 - tau), 3);
  });

  it('let the current of a jammed motor rise as 1 − exp(−t R / L)', () => {
    const coil: Plant = { ...ideal, motor: { ...ideal.motor, inductance: 2e-3, dragTorque: 1e6 } };
    const result = simulate(coil, duty, { ...forward, duration: 0.05, samples: 1001 });
    for (const t of [0.005, 0.02, 0.05]) {
      const i = Math.round(t / 5e-5);
      expect((result.current[i] ?? 0) / 240).toBeCloseTo(1 - Math.exp(-t / 0.02), 3);
    }
  });

  it('sag by the resistance of the supply and share it with the winding at full duty', () => {
    const sagging: Plant = {
      ...ideal,
      motor: { ...ideal.motor, dragTorque: 1e6 },
      supply: { ...ideal.supply, resistance: 0.05 },
    };
    expect(simulate(sagging, duty, forward).peaks.current).toBeCloseTo(24 / 0.15, 9);
    // At half duty the supply sees half the current, and the motor half its drop.
    const half = simulate(sagging, { ...duty, outputLimit: 0.5 }, forward);
    expect(half.peaks.current).toBeCloseTo(12 / (0.1 + 0.25 * 0.05), 9);
  });

  it('keep inside the current limits of motor and battery', () => {
    const limited: Plant = {
      ...ideal,
      supply: { ...ideal.supply, motorCurrentLimit: 40, batteryCurrentLimit: 10 },
    };
    const result = simulate(limited, duty, { ...forward, samples: 4001 });
    expect(result.peaks.current).toBeLessThanOrEqual(40);
    for (let i = 1; i < result.time.length; i += 1) {
      const I = result.current[i] ?? 0;
      // Kept before the step that it belongs to: one step of speed apart.
      const back = 3 * (result.rotorSpeed[i] ?? 0);
      expect((0.1 * I + back) * I).toBeLessThan(10 * 24 * 1.05);
    }
  });

  it('feed back no more than the limit when they brake from full speed', () => {
    const braking: Plant = { ...ideal, supply: { ...ideal.supply, regenCurrentLimit: 5 } };
    const target = { kind: 'step' as const, at: 1, from: 1e6, to: -1e6 };
    const result = simulate(braking, duty, { ...forward, target, samples: 40_001 });
    let most = 0;
    for (let i = 0; i < result.time.length; i += 1) {
      const I = result.current[i] ?? 0;
      most = Math.max(most, -(0.1 * I + 3 * (result.rotorSpeed[i] ?? 0)) * I);
    }
    expect(most).toBeGreaterThan(5 * 24 * 0.9);
    expect(most).toBeLessThan(5 * 24 * 1.1);
  });

  it('never push backwards where the drive turns one way only', () => {
    const oneWay: Plant = { ...ideal, supply: { ...ideal.supply, canReverse: false } };
    const target = { kind: 'step' as const, at: 0.5, from: 1e6, to: -1e6 };
    const result = simulate(oneWay, duty, { ...forward, target });
    expect(Math.min(...result.current)).toBeGreaterThanOrEqual(0);
  });
});

describe('a rigid second-order loop', () => {
  // θ'' J + b θ' + K θ = K θ_w: Nise, ch. 4. The loop runs at every step, so that sampling does not tell.
  const K = 30;
  const perAmpere = ideal.motor.torqueConstant * ideal.ratio;
  for (const zeta of [0.2, 0.45, 0.7]) {
    it(`overshoots and rises as the textbook says at a damping of ${zeta}`, () => {
      const omega = Math.sqrt(K / inertia);
      const plant = loaded(
        { ...ideal, train: { ...ideal.train, stiffness: 1e6 } },
        { viscousFriction: 2 * zeta * omega * inertia },
      );
      const controller = {
        ...plain,
        period: 5e-5,
        kp: 1,
        drive: { ...plain.drive, kind: 'current' as const, full: K / perAmpere },
      };
      const target = { kind: 'step' as const, at: 0, from: 0, to: 0.5 };
      const run: Run = { ...free, free: false, duration: 3, innerStep: 5e-5, target, samples: 60_001 };
      const result = simulate({ ...plant, supply: { ...plant.supply, voltage: 1e4 } }, controller, run);
      const metrics = metricsOf(result, target);
      expect(metrics.overshoot).toBeCloseTo(overshoot.of({ zeta }), 3);
      expect(metrics.rise ?? 0).toBeCloseTo(riseTime(zeta, omega), 3);
      const peak = result.time[result.output.indexOf(Math.max(...result.output))] ?? 0;
      expect(peak / peakTime.of({ zeta, omega_n: omega })).toBeCloseTo(1, 2);
      // The true settling time lies inside the envelope's: exp(−ζω t) / √(1 − ζ²) = 2 %.
      const envelope = -Math.log(0.02 * Math.sqrt(1 - zeta ** 2)) / (zeta * omega);
      expect(metrics.settling ?? 0).toBeLessThanOrEqual(envelope * 1.001);
      expect(metrics.settling ?? 0).toBeGreaterThan(0.6 * envelope);
    });
  }
});

describe('a stop', () => {
  it('turns a rigid body back with the torque ω √(k J) and its own speed', () => {
    const plant = loaded({ ...ideal, train: { ...ideal.train, stiffness: 1e7 } }, { highStop: 0.5 });
    const result = simulate(plant, plain, { ...free, duration: 0.6, start: { angle: 0, speed: 3 } });
    expect(result.stopAt ?? 0).toBeCloseTo(0.5 / 3, 3);
    expect(result.stopSpeed ?? 0).toBeCloseTo(3, 6);
    const into = Math.max(...result.output) - 0.5;
    expect(into).toBeCloseTo(3 * Math.sqrt(inertia / 20_000), 3);
  });

  it('throws the wound-up rotor’s energy into the train', () => {
    // A stop that hardly gives holds the output: ½ J_m ω² = ½ k φ² is left in the train.
    const plant = loaded(ideal, { highStop: 0.5, stopStiffness: Number.POSITIVE_INFINITY });
    const light = loaded(plant, { inertia: 1e-3 });
    const result = simulate(light, plain, { ...free, duration: 0.25, start: { angle: 0, speed: 3 } });
    const exact = 3 * Math.sqrt(3000 * rotorInertia);
    expect(result.peaks.toothTorque / exact).toBeGreaterThan(0.98);
    expect(result.peaks.toothTorque / exact).toBeLessThan(1.08);
  });
});

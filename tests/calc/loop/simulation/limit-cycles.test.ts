/**
 * Swings that last: simulated limit cycles of a relay, a relay with dead band, a quantised sensor and backlash against
 * describing functions. The method counts the first harmonic alone, so that some percent between the two are its own.
 */
import { describe, expect, it } from 'vitest';
import { backlashGain, backlashPhase, relayDeadBandGain, relayGain } from '@/lib/calc/loop/describing';
import { metricsOf } from '@/lib/calc/loop/simulation/metrics';
import { simulate } from '@/lib/calc/loop/simulation/simulate';
import type { Controller, Plant } from '@/lib/calc/loop/simulation/types';
import { ideal, plain } from './systems';

// A duty drive behind a lag: K / (s (1 + τ_m s)(1 + τ_l s)) with K = U / (K_t N), a rigid train, no friction.
const rigid: Plant = {
  ...ideal,
  train: { ...ideal.train, stiffness: 1e6, damping: 20 },
  load: { ...ideal.load, inertia: 0.3 },
};
const perAmpere = ideal.motor.torqueConstant * ideal.ratio;
const K = 24 / perAmpere;
const motorLag = ((0.3 + ideal.motor.inertia * ideal.ratio ** 2) * ideal.motor.resistance) / perAmpere ** 2;
const driveLag = 0.02;
const latency = 4e-3;

const period = 2.5e-4;
// Half a sample and latency.
const delay = latency + period / 2;

function openLoop(omega: number): { readonly size: number; readonly lag: number } {
  return {
    size: K / (omega * Math.hypot(1, motorLag * omega) * Math.hypot(1, driveLag * omega)),
    lag: Math.PI / 2 + Math.atan(motorLag * omega) + Math.atan(driveLag * omega) + omega * delay,
  };
}

/** Where a growing function passes a value. */
function solve(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 80; i += 1) {
    const middle = (a + b) / 2;
    if (f(middle) < 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

function cycle(controller: Partial<Controller>, plant = rigid, start = 0.2, duration = 6) {
  const result = simulate(
    plant,
    {
      ...plain,
      period,
      latency,
      outputLimit: 1,
      drive: { ...plain.drive, lag: driveLag },
      ...controller,
    },
    {
      duration,
      target: { kind: 'hold', angle: 0 },
      start: { angle: start },
      seed: 1,
      samples: 24_001,
    },
  );
  const { swing, swingFrequency } = metricsOf(result, { at: 0, from: start, to: 0 });
  return { swing, omega: 2 * Math.PI * (swingFrequency ?? Number.NaN) };
}

describe('a relay', () => {
  const M = 0.25;
  // Where the loop lags half a turn the relay’s gain makes it 1.
  const omega = solve((w) => openLoop(w).lag - Math.PI, 1, 200);
  const relay = { kp: 1e6, outputLimit: M };

  it('swings as often as its describing function says, within 5 %, and as far, within 8 %', () => {
    const simulated = cycle(relay);
    // Gain 4 M / (π A) = 1 / |G|, so that A follows from the gain at amplitude 1.
    const A = relayGain.of({ M, A: 1 }) * openLoop(omega).size;
    expect(Math.abs(simulated.omega / omega - 1)).toBeLessThan(0.05);
    expect(Math.abs(simulated.swing / A - 1)).toBeLessThan(0.08);
  });

  it('with a dead band swings as said, within 5 %, and rests where no amplitude has the gain', () => {
    const size = openLoop(omega).size;
    // Greatest gain 2 M / (π d), at A = √2 d: beyond this band nothing can swing.
    const widest = (2 * M * size) / Math.PI;
    const d = 0.6 * widest;
    const A = solve((a) => 1 / size - relayDeadBandGain.of({ M, A: a, d }), d * Math.SQRT2, 50 * d);
    const simulated = cycle({ ...relay, deadBand: d });
    expect(Math.abs(simulated.omega / omega - 1)).toBeLessThan(0.05);
    expect(Math.abs(simulated.swing / A - 1)).toBeLessThan(0.05);
    expect(cycle({ ...relay, deadBand: 1.3 * widest }).swing).toBeLessThan(1e-9);
  });
});

describe('a loop beyond its limit', () => {
  it('swings at the amplitude where saturation has brought its gain down to the limit, within 6 %', () => {
    const omega = solve((w) => openLoop(w).lag - Math.PI, 1, 200);
    const limit = 1 / openLoop(omega).size;
    const kp = 2 * limit;
    // Saturation at s: gain 2/π (asin(s/A) + s/A √(1 − (s/A)²)), Slotine and Li ch. 5 (from memory).
    const level = 0.4;
    const s = level / kp;
    const gain = (A: number) => (2 / Math.PI) * (Math.asin(s / A) + (s / A) * Math.sqrt(1 - (s / A) ** 2));
    const A = solve((a) => 0.5 - gain(a), s, 100 * s);
    const simulated = cycle({ kp, outputLimit: level });
    expect(Math.abs(simulated.omega / omega - 1)).toBeLessThan(0.05);
    expect(Math.abs(simulated.swing / A - 1)).toBeLessThan(0.06);
    expect(cycle({ kp: 0.5 * limit }).swing).toBeLessThan(1e-6);
  });
});

describe('backlash', () => {
  // The output is light and rubs, so that it stays where the teeth leave it: play as the describing function has it.
  const half = 0.02;
  const held: Plant = {
    ...ideal,
    motor: { ...ideal.motor, inertia: 3e-5 },
    train: { stiffness: 1e5, damping: 20, backlash: 2 * half, efficiency: 1 },
    load: { ...ideal.load, inertia: 2e-4, dryFriction: 0.05 },
  };
  const lag = (ideal.motor.inertia * 5 * ideal.ratio ** 2 * ideal.motor.resistance) / perAmpere ** 2;
  const late = 2e-3;
  const loopAt = (kp: number, ki: number, omega: number) => ({
    size: (Math.hypot(kp, ki / omega) * K) / (omega * Math.hypot(1, lag * omega)),
    lag: Math.PI / 2 + Math.atan2(ki / omega, kp) + Math.atan(lag * omega) + omega * (late + period / 2),
  });

  for (const [kp, ki] of [
    [0.5, 5],
    [0.3, 3],
    [1, 25],
    [2, 60],
  ] as const) {
    it(`under an integral swings as often as said within 4 %, as far within 12 %, at gains of ${kp} and ${ki}`, () => {
      // Frequency at which the gain closes the loop for an amplitude of the rotor; then the amplitude where the phase does.
      const omegaAt = (A: number) =>
        solve((w) => 1 - loopAt(kp, ki, w).size * backlashGain.of({ b: half, A }), 0.01, 1000);
      const left = (A: number) => Math.PI - loopAt(kp, ki, omegaAt(A)).lag + backlashPhase.of({ b: half, A });
      const A = solve(left, 1.001 * half, 100 * half);
      const simulated = cycle(
        {
          kp,
          ki,
          latency: late,
          outputLimit: Number.POSITIVE_INFINITY,
          drive: plain.drive,
        },
        held,
        0.2,
        20,
      );
      // Swings not much wider than the gap are far from a sine: the method speaks of those beyond twice its half.
      expect(A / half).toBeGreaterThan(2.3);
      expect(Math.abs(simulated.omega / omegaAt(A) - 1)).toBeLessThan(0.04);
      // The output turns back a half gap short of the rotor.
      expect(Math.abs(simulated.swing / (A - half) - 1)).toBeLessThan(0.12);
    });
  }

  it('swings no more without the integral', () => {
    const simulated = cycle({ kp: 2, latency: late, drive: plain.drive }, held);
    expect(simulated.swing).toBeLessThan(1e-9);
  });
});

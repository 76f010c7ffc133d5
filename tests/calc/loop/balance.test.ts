// Limit cycles by harmonic balance, against the play worked point by point; and swings of simulated outputs told from rest.
import { describe, expect, it } from 'vitest';
import { predictedCycle } from '@/lib/calc/loop/balance';
import { controllerResponse, plantSweep } from '@/lib/calc/loop/linear';
import { marginsOf, type Response, rational, sweep, through } from '@/lib/calc/loop/response';
import { swingThatGoesOn } from '@/lib/calc/loop/swing';
import { stepTrial } from '@/lib/calc/loop/trial';
import { plainController, plainLinear, plainPlant } from './loop-on-paper';

/** First harmonic of play of half width b for a sine of amplitude A, by following the play over two turns (independent). */
function harmonicOfPlay(A: number, b: number): { re: number; im: number } {
  const count = 20000;
  let carried = 0;
  let [re, im] = [0, 0];
  for (let i = 0; i < 2 * count; i += 1) {
    const angle = (2 * Math.PI * i) / count;
    const x = A * Math.sin(angle);
    carried = Math.max(x - b, Math.min(x + b, carried));
    if (i < count) continue;
    re += (2 / count) * carried * Math.sin(angle);
    im += (2 / count) * carried * Math.cos(angle);
  }
  return { re: re / A, im: im / A };
}

/** By how much 1 + N L misses zero at a cycle that is predicted for the output of the play. */
function miss(response: Response, output: number, frequency: number, b: number): number {
  const at = { re: 0, im: 0 };
  response(2 * Math.PI * frequency, at);
  // The amplitude before the play that leaves this one behind it.
  let [low, high] = [b * (1 + 1e-6), 1000 * b];
  for (let n = 0; n < 50; n += 1) {
    const middle = Math.sqrt(low * high);
    const { re, im } = harmonicOfPlay(middle, b);
    if (Math.hypot(re, im) * middle < output) low = middle;
    else high = middle;
  }
  const { re, im } = harmonicOfPlay(high, b);
  return Math.hypot(1 + re * at.re - im * at.im, re * at.im + im * at.re);
}

describe('harmonic balance', () => {
  const b = 0.01;
  const brisk = rational([6], [1, 3, 2, 0]);

  it('finds the cycle at which play turns the loop round once: 1 + N L = 0, the play worked point by point', () => {
    // At K = 4 of 6 the loop alone is stable, and play makes it swing.
    const loop = rational([4], [1, 3, 2, 0]);
    const cycle = predictedCycle(sweep(loop, 1e-2, 1e2, [], 300), { halfPlay: b, deadBand: 0 });
    expect(cycle).not.toBeNull();
    expect(cycle?.amplitude ?? 0).toBeGreaterThan(0);
    expect(miss(loop, cycle?.amplitude ?? 0, cycle?.frequency ?? 0, b)).toBeLessThan(0.01);
  });

  it('grows with the play in proportion', () => {
    const swept = sweep(rational([4], [1, 3, 2, 0]), 1e-2, 1e2, [], 300);
    const one = predictedCycle(swept, { halfPlay: b, deadBand: 0 });
    const two = predictedCycle(swept, { halfPlay: 2 * b, deadBand: 0 });
    expect((two?.amplitude ?? 0) / (one?.amplitude ?? 1)).toBeCloseTo(2, 9);
    expect(two?.frequency).toBeCloseTo(one?.frequency ?? 0, 9);
  });

  it('finds none without play, none at a low gain, and none that a wide dead band lets be', () => {
    expect(predictedCycle(sweep(brisk, 1e-2, 1e2), { halfPlay: 0, deadBand: 0 })).toBeNull();
    const slow = sweep(rational([0.3], [1, 3, 2, 0]), 1e-2, 1e2);
    expect(predictedCycle(slow, { halfPlay: b, deadBand: 0 })).toBeNull();
    const swept = sweep(rational([4], [1, 3, 2, 0]), 1e-2, 1e2, [], 300);
    expect(predictedCycle(swept, { halfPlay: b, deadBand: 50 * b })).toBeNull();
  });
});

describe('the cycle predicted for a light output behind 0.02 rad of play', () => {
  // The load's inertia is a fiftieth of the rotor's, and it rubs: it stays where it is left.
  const inertia = 0.005;
  const base = plainLinear('speed', { kp: 3, ki: 0, kd: 0 });
  const drive = { ...base.drive, regulator: (31.25 / 0.032) * (0.25 / 0.255) };
  const plant = plantSweep({ ...base, drive, loadInertia: inertia, viscousFriction: 4 });
  const limit = marginsOf(through(plant, controllerResponse(base.gains))).gainMargin ?? 0;
  const load = { ...plainPlant.load, inertia, viscousFriction: 4 };
  const playing = { ...plainPlant, load, train: { ...plainPlant.train, backlash: 0.02 } };
  const both = (share: number) => {
    const gains = { kp: 3 * limit * share, ki: 0, kd: 0 };
    const open = through(plant, controllerResponse({ ...gains, derivativeFilter: 0 }));
    return {
      predicted: predictedCycle(open, { halfPlay: 0.01, deadBand: 0 }),
      simulated: stepTrial(playing, plainController('speed', gains), 0.1, { innerStep: 2e-4, duration: 4 }),
    };
  };

  it('is what a simulation does near the limit of stability: its frequency within a tenth, its size within a factor of two', () => {
    const { predicted, simulated } = both(0.85);
    expect((predicted?.frequency ?? 0) / (simulated.frequency ?? 1)).toBeGreaterThan(0.9);
    expect((predicted?.frequency ?? 9) / (simulated.frequency ?? 1)).toBeLessThan(1.1);
    expect((predicted?.amplitude ?? 0) / simulated.cycle).toBeGreaterThan(0.5);
    expect((predicted?.amplitude ?? 9) / simulated.cycle).toBeLessThan(2);
  });

  it('is none at half the limit, and the simulation rests', () => {
    const { predicted, simulated } = both(0.5);
    expect(predicted).toBeNull();
    expect(simulated.cycle).toBe(0);
  });
});

describe('a swing', () => {
  const result = (at: (t: number) => number) => {
    const time = Float64Array.from({ length: 601 }, (_, i) => i / 150);
    return { time, output: time.map(at) } as unknown as Parameters<typeof swingThatGoesOn>[0];
  };

  it('that goes on is told with its amplitude and frequency', () => {
    const swing = swingThatGoesOn(
      result((t) => 1 + 0.1 * Math.sin(2 * Math.PI * 3 * t)),
      0.01,
    );
    expect(swing.cycle).toBeCloseTo(0.1, 3);
    expect(swing.frequency).toBeCloseTo(3, 1);
  });

  it('that dies away is none', () => {
    const dying = result((t) => 1 + Math.exp(-1.5 * t) * Math.sin(2 * Math.PI * 3 * t));
    expect(swingThatGoesOn(dying, 0.01)).toEqual({ cycle: 0, frequency: null });
  });

  it('that grows goes on', () => {
    expect(
      swingThatGoesOn(
        result((t) => Math.exp(0.5 * t) * Math.sin(9 * t)),
        0.01,
      ).cycle,
    ).toBeGreaterThan(1);
  });

  it('too small to be seen is none, nor is a slow creep', () => {
    expect(
      swingThatGoesOn(
        result((t) => 0.005 * Math.sin(20 * t)),
        0.01,
      ).cycle,
    ).toBe(0);
    expect(
      swingThatGoesOn(
        result((t) => t),
        0.01,
      ).cycle,
    ).toBe(0);
  });
});

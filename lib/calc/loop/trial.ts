// Trials of a loop by simulation: a step from rest, and a ramp at a steady speed that ends.
import { type LinearLoop, resonances } from './linear';
import { type Metrics, metricsOf } from './simulation/metrics';
import { simulate } from './simulation/simulate';
import type { Controller, Plant, Result } from './simulation/types';
import { swingThatGoesOn } from './swing';

/** How finely and how long to simulate. */
export interface Pace {
  /** s */
  readonly innerStep: number;
  readonly duration: number;
}

export interface StepTrial {
  readonly result: Result;
  readonly metrics: Metrics;
  /** Half the swing that goes on at the end, rad; 0 where the output rests but for what noise and steps of the sensor move. */
  readonly cycle: number;
  /** Of that swing, Hz; null without one. */
  readonly frequency: number | null;
}

const seed = 1;
const points = 601;

const mostSteps = 8000;

/**
 * Steps fine enough for the faster swing of the two masses, within what is quick (the simulation is stable at any); long
 * enough for some seven swings of the loop, up to 4 s.
 */
export function paceOf(linear: LinearLoop, crossover: number | undefined): Pace {
  const fastest = resonances(linear)[0] ?? 0;
  const duration = Math.min(4, Math.max(1, 45 / (crossover ?? 10)));
  const fine = Math.max(2.5e-4, 0.15 / fastest, duration / mostSteps);
  return { innerStep: Math.min(5e-4, fine), duration };
}

/** A step of `way` (rad) from the middle of the travel; the loop does not trip on it. */
export function stepTrial(plant: Plant, controller: Controller, way: number, pace: Pace): StepTrial {
  const result = simulate(plant, tried(controller, pace), {
    ...pace,
    target: { kind: 'step', at: 0, from: 0, to: way },
    start: { angle: 0 },
    seed,
    samples: points,
  });
  const { quantum, noise } = controller.sensor;
  // What the loop does not see, or lets be, is no fault of its gains.
  const band = Math.max(0.02 * way, controller.deadBand + quantum + 2 * noise);
  const metrics = metricsOf(result, { at: 0, from: 0, to: way, band });
  return { result, metrics, ...swingThatGoesOn(result, Math.max(quantum, 2 * noise, 0.01 * way)) };
}

export interface RampTrial {
  readonly result: Result;
  /** By how much the output is behind at the end of the steady part, rad. */
  readonly behind: number;
  /** By how much it runs past the end, rad. */
  readonly past: number;
}

/** A move that runs up in `runUp` (s), goes on at a steady `speed` (rad/s) for as long, and runs down again. */
export interface Ramp {
  readonly speed: number;
  readonly runUp: number;
  readonly steady: number;
}

const bends = 8;

/** A ramp from the middle of the travel, with rest after it. */
export function rampTrial(plant: Plant, controller: Controller, ramp: Ramp, pace: Pace): RampTrial {
  const { times, angles } = profileOf(ramp);
  const over = times.at(-1) ?? 0;
  const end = angles.at(-1) ?? 0;
  const result = simulate(plant, tried(controller, pace), {
    innerStep: pace.innerStep,
    duration: over + Math.min(1, pace.duration / 2),
    target: { kind: 'points', times, angles },
    start: { angle: 0 },
    seed,
    samples: points,
  });
  const steadyUntil = ramp.runUp + ramp.steady;
  let behind = 0;
  let past = 0;
  for (let i = 0; i < result.time.length; i += 1) {
    const output = result.output[i] ?? 0;
    if ((result.time[i] ?? 0) <= steadyUntil) behind = (result.target[i] ?? 0) - output;
    past = Math.max(past, output - end);
  }
  return { result, behind, past };
}

/** The wanted angle: parabolas by straight pieces at both ends, a line between. */
function profileOf({ speed, runUp, steady }: Ramp): { times: number[]; angles: number[] } {
  const times: number[] = [];
  const angles: number[] = [];
  const way = speed * runUp;
  for (let n = 0; n <= bends; n += 1) {
    times.push((runUp * n) / bends);
    angles.push((way / 2) * (n / bends) ** 2);
  }
  for (let n = bends; n >= 0; n -= 1) {
    times.push(runUp + steady + (runUp * (bends - n)) / bends);
    angles.push(way + speed * steady - (way / 2) * (n / bends) ** 2);
  }
  return { times, angles };
}

/** The loop as it is tried: it does not trip, and one that is worked more often than a step lasts is worked every step. */
function tried(controller: Controller, { innerStep }: Pace): Controller {
  return {
    ...controller,
    period: Math.max(controller.period, innerStep),
    followingLimit: Number.POSITIVE_INFINITY,
  };
}

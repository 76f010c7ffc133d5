// Trials of a loop by simulation: a step from rest, and a ramp at a steady speed that ends.
import { type LinearLoop, resonances } from './linear';
import { type Metrics, metricsOf } from './simulation/metrics';
import { simulate } from './simulation/simulate';
import type { Controller, Plant, Result } from './simulation/types';

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

/** Steps fine enough for the faster swing of the two masses, within what is quick; long enough for a dozen swings of the loop. */
export function paceOf(linear: LinearLoop, crossover: number | undefined): Pace {
  const fastest = resonances(linear)[0] ?? 0;
  return {
    innerStep: Math.min(5e-4, Math.max(2e-4, 0.25 / fastest)),
    duration: Math.min(4, Math.max(1, 45 / (crossover ?? 10))),
  };
}

/** A step of `way` (rad) from the middle of the travel; the loop does not trip on it. */
export function stepTrial(plant: Plant, controller: Controller, way: number, pace: Pace): StepTrial {
  const result = simulate(plant, untripped(controller), {
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
  const seen = Math.max(quantum, 2 * noise, 0.01 * way);
  const swings = metrics.swingFrequency !== null && metrics.swing > seen;
  return {
    result,
    metrics,
    cycle: swings ? metrics.swing : 0,
    frequency: swings ? metrics.swingFrequency : null,
  };
}

export interface RampTrial {
  readonly result: Result;
  /** By how much the output is behind when the ramp ends, rad. */
  readonly behind: number;
  /** By how much it runs past the end, rad. */
  readonly past: number;
}

/** A ramp at `speed` (rad/s) for `time` (s), then rest. */
export function rampTrial(
  plant: Plant,
  controller: Controller,
  speed: number,
  time: number,
  pace: Pace,
): RampTrial {
  const end = speed * time;
  const result = simulate(plant, untripped(controller), {
    innerStep: pace.innerStep,
    duration: time + Math.min(1, pace.duration / 2),
    target: { kind: 'points', times: [0, time], angles: [0, end] },
    start: { angle: 0 },
    seed,
    samples: points,
  });
  let behind = 0;
  let past = 0;
  for (let i = 0; i < result.time.length; i += 1) {
    const output = result.output[i] ?? 0;
    if ((result.time[i] ?? 0) <= time) behind = (result.target[i] ?? 0) - output;
    past = Math.max(past, output - end);
  }
  return { result, behind, past };
}

function untripped(controller: Controller): Controller {
  return { ...controller, followingLimit: Number.POSITIVE_INFINITY };
}

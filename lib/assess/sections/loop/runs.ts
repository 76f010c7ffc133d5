// The simulations of the section: a step and a ramp, loaded and bare, and the gains that a trial finds good.
import { type Cycle, predictedCycle } from '@/lib/calc/loop/balance';
import { inertiaOnOutput, runUpTime, simulatedStep } from '@/lib/calc/loop/drive';
import type { Gains } from '@/lib/calc/loop/linear';
import { loweredUntil } from '@/lib/calc/loop/suggest';
import {
  paceOf,
  type Ramp,
  type RampTrial,
  rampTrial,
  type StepTrial,
  stepTrial,
} from '@/lib/calc/loop/trial';
import { moveProfiles } from '@/lib/calc/motion/profiles';
import type { Traced } from '@/lib/quantity/traced';
import type { CurvePoint, StepInput } from '../../assessment';
import { practice } from '../../sheet';
import type { Work } from '../../work';
import type { Both, Margined } from './margins';
import type { LoopPlant } from './plant';

export interface LoadedRuns {
  readonly step: StepTrial;
  readonly ramp: RampTrial;
  /** By harmonic balance, beside the simulation. */
  readonly predicted: Cycle | null;
}

export interface Runs extends Both<LoadedRuns> {
  readonly way: number;
  /** How long the step was followed, s. */
  readonly duration: number;
  /** Gains that keep the margins and answer the step well, loaded; null where none tried does. */
  readonly good: Gains | null;
  readonly playKnown: boolean;
  readonly assumed: readonly string[];
}

/** A trial is good that overshoots by no more than a tenth and comes to rest. */
export function isGood({ metrics, cycle }: StepTrial): boolean {
  return cycle === 0 && metrics.rise !== null && metrics.overshoot <= 0.1;
}

/** Simulates, and draws the curves that the figures are read off. */
export function runsOf(work: Work, plant: LoopPlant, both: Both<Margined>): Runs {
  const { duty } = work.design;
  const step = work.sheet.work('loop', 'loop', simulatedStep, {
    phi_move: duty.moveAngle,
    phi_out: duty.travel,
  });
  const way = step.value;
  const pace = paceOf(both.loaded.linear, both.loaded.margins.gainCrossover);
  const runUp = runUpOf(work);
  const ramp = rampOf(duty.outputSpeed.value, runUp.value, duty.travel.value);
  const run = (on: Margined): LoadedRuns => ({
    step: stepTrial(on.plant, plant.controller, way, pace),
    ramp: rampTrial(on.plant, plant.controller, ramp, pace),
    predicted: predictedCycle(on.open, {
      halfPlay: on.plant.train.backlash / 2,
      deadBand: plant.controller.deadBand,
    }),
  });
  const { kept } = both.loaded;
  // A few of these may be worked: coarser, but never coarser than the loop itself.
  const quick = { ...pace, innerStep: Math.max(pace.innerStep, Math.min(1e-3, plant.controller.period)) };
  const good =
    kept === null
      ? null
      : loweredUntil(kept, (tried) =>
          isGood(stepTrial(plant.plant, { ...plant.controller, ...tried }, way, quick)),
        );
  const { playKnown, assumed } = plant;
  const { duration } = pace;
  const runs = { loaded: run(both.loaded), bare: run(both.bare), way, duration, good, playKnown, assumed };
  const bareInertia = work.sheet.work(
    'loop',
    'loop',
    inertiaOnOutput,
    { s_L: practice(0, 'without load'), J_L: plant.loadInertia, N: plant.ratio, J_m: plant.rotorInertia },
    'J_bare',
  );
  const inputs = [
    { symbol: 'phi_st', ...step },
    { symbol: 'omega_out', ...duty.outputSpeed },
    { symbol: 't_up', ...runUp },
    { symbol: 'J_bare', ...bareInertia },
    ...plant.inputs,
  ];
  curves(work, runs, inputs);
  return runs;
}

const quickest = practice(0.5, 'speed reached within half a second, on the safe side for the train');

function runUpOf(work: Work): Traced {
  const { duty } = work.design;
  const alpha = work.sheet.work(
    'loop',
    'loop',
    moveProfiles[duty.profile].acceleration,
    { phi: duty.moveAngle, t: duty.moveTime },
    'alpha.loop',
  );
  return work.sheet.work('loop', 'loop', runUpTime, { omega_out: duty.outputSpeed, alpha, t_most: quickest });
}

/** Steady for a third of a second, within two fifths of the travel; slower where not even the run up and down fits in. */
function rampOf(speed: number, runUp: number, travel: number): Ramp {
  const room = 0.4 * travel;
  const reached = Math.min(speed, room / runUp);
  return { speed: reached, runUp, steady: Math.min(1 / 3, Math.max(0, room / reached - runUp)) };
}

function curves(work: Work, { loaded, bare }: Runs, inputs: readonly StepInput[]): void {
  const shared = { section: 'loop', xLabel: 'Time', xUnit: 's', marks: [], inputs } as const;
  const { result } = loaded.step;
  work.curves.push({
    ...shared,
    key: 'loop.step',
    label: 'Answer of the output to a step',
    yLabel: 'Output',
    yUnit: 'deg',
    lines: [
      { label: 'Command', points: pointsOf(result.time, result.target) },
      { label: 'Loaded', points: pointsOf(result.time, result.output) },
      { label: 'Without load', points: pointsOf(bare.step.result.time, bare.step.result.output) },
    ],
  });
  const ramp = loaded.ramp.result;
  const bareRamp = bare.ramp.result;
  work.curves.push({
    ...shared,
    key: 'loop.torque',
    label: 'Torque on the train in a ramp at the output speed, at the output',
    yLabel: 'Torque of the train',
    yUnit: 'N m',
    lines: [
      { label: 'Loaded', points: pointsOf(ramp.time, ramp.toothTorque) },
      { label: 'Without load', points: pointsOf(bareRamp.time, bareRamp.toothTorque) },
    ],
  });
}

const drawn = 121;

function pointsOf(x: Float64Array, y: Float64Array): CurvePoint[] {
  const points: CurvePoint[] = [];
  const every = Math.max(1, (x.length - 1) / (drawn - 1));
  for (let k = 0; k < drawn; k += 1) {
    const i = Math.min(x.length - 1, Math.round(k * every));
    points.push({ x: x[i] ?? 0, y: y[i] ?? 0 });
  }
  return points;
}

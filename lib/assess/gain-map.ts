// The map of gains against loads: how the position loop behaves at each proportional gain with each load, by simulation.
import { simulatedStep } from '@/lib/calc/loop/drive';
import { controllerResponse, plantSweep } from '@/lib/calc/loop/linear';
import { type Loaded, withLoad } from '@/lib/calc/loop/load';
import { marginsOf, through } from '@/lib/calc/loop/response';
import type { Controller } from '@/lib/calc/loop/simulation/types';
import { suggestedGains } from '@/lib/calc/loop/suggest';
import { type Pace, paceOf, type StepTrial, stepTrial } from '@/lib/calc/loop/trial';
import type { Design } from '@/lib/design/document';
import { readSI } from '@/lib/design/read';
import { plantOfDocument } from './sections/loop/simulated-plant';

/** What is simulated: every gain with every load. Plain data, to be handed to workers. */
export interface GainMapPlan {
  /** Proportional gains, ascending, evenly spaced on a log scale. */
  readonly gains: readonly number[];
  /** Multiples of the stated load, ascending from 0 (none) to 2: its inertia, weight and friction together. */
  readonly loads: readonly number[];
  /** The gain entered; the load it is meant for is 1. */
  readonly present: number;
  /** The gain suggested for the stated load; null where none can be. */
  readonly suggested: number | null;
}

/** From slow to dangerous; a word for each stands in `gainVerdictLabels`. */
export type GainVerdict = 'sluggish' | 'good' | 'ringing' | 'unstable';

export const gainVerdictLabels = {
  sluggish: 'Sluggish',
  good: 'Good',
  ringing: 'Rings',
  unstable: 'Unstable',
} as const satisfies Readonly<Record<GainVerdict, string>>;

/** What one cell of the map says. Plain data. */
export interface GainMapCell {
  readonly verdict: GainVerdict;
  /** Over the size of the step, 0.1 for 10 %. */
  readonly overshoot: number;
  /** Seconds to stay within the band; null where it does not within the run. */
  readonly settling: number | null;
  /** Half the swing that remains at the end, rad at the output; 0 where it comes to rest. */
  readonly limitCycle: number;
}

/** What every cell of one document shares; made once in each worker. */
export interface PreparedGainMap {
  readonly loaded: Loaded;
  readonly controller: Controller;
  /** The step that is simulated, rad. */
  readonly way: number;
  readonly pace: Pace;
}

const perSide = 24;
/** As far below the lower and above the higher of the two gains, the one entered and the one that suits, as the map reaches. */
const reach = 6;

/** The gains and loads of a document's map, or the sentence that says what to enter first. */
export function gainMapPlan(document: Design): GainMapPlan | string {
  const plant = plantOfDocument(document);
  if (typeof plant === 'string') return plant;
  const present = plant.linear.gains.kp;
  const suggested = suggestedGains(plantSweep(plant.linear), plant.linear.gains)?.kp ?? null;
  const low = Math.min(present, suggested ?? present) / reach;
  const high = Math.max(present, suggested ?? present) * reach;
  return {
    gains: spread((part) => rounded(low * (high / low) ** part)),
    loads: spread((part) => rounded(2 * part)),
    present,
    suggested: suggested === null ? null : rounded(suggested),
  };
}

function spread(at: (part: number) => number): number[] {
  return Array.from({ length: perSide }, (_, i) => at(i / (perSide - 1)));
}

/** To three digits, as a gain is typed. */
function rounded(value: number): number {
  return Number(value.toPrecision(3));
}

/** Reads the document once for all cells, or the sentence that says what to enter first. */
export function prepareGainMap(document: Design): PreparedGainMap | string {
  const plant = plantOfDocument(document);
  if (typeof plant === 'string') return plant;
  const { duty } = readSI(document);
  const open = through(plantSweep(plant.linear), controllerResponse(plant.linear.gains));
  return {
    loaded: plant,
    controller: plant.controller,
    way: simulatedStep.of({ phi_move: duty.moveAngle.value, phi_out: duty.travel.value }),
    pace: { innerStep: coarse, duration: paceOf(plant.linear, marginsOf(open).gainCrossover).duration },
  };
}

/** Seconds; halving it moves no verdict but at the edge of two, which a test holds. */
const coarse = 5e-4;

/**
 * Simulates one cell: the step of the loop's section at this proportional gain, integral and derivative gain in the same
 * proportion as entered, with this multiple of the stated load.
 */
export function gainMapCell(prepared: PreparedGainMap, gain: number, load: number): GainMapCell {
  const { loaded, controller, way, pace } = prepared;
  const { plant } = withLoad(loaded, load);
  const { kp, ki, kd } = controller;
  const factor = gain / kp;
  const trial = stepTrial(plant, { ...controller, kp: gain, ki: ki * factor, kd: kd * factor }, way, pace);
  return {
    verdict: verdictOf(trial, way, pace.duration),
    overshoot: trial.metrics.overshoot,
    settling: trial.metrics.settling,
    limitCycle: trial.cycle,
  };
}

/** Overshoot from which an answer rings, and half swing over the step from which it is unstable. */
const ringing = 0.25;
const unstable = 0.2;
/** Rise over the time simulated, and distance left over the step, from which an answer is sluggish. */
const slow = 0.3;
const short = 0.1;

function verdictOf({ metrics, cycle, result }: StepTrial, way: number, duration: number): GainVerdict {
  const last = Math.abs((result.output.at(-1) ?? 0) - way);
  if (cycle > unstable * way || metrics.overshoot > 1) return 'unstable';
  if (cycle > 0 || metrics.overshoot > ringing) return 'ringing';
  const late = metrics.rise === null || metrics.rise > slow * duration || last > short * way;
  return late ? 'sluggish' : 'good';
}

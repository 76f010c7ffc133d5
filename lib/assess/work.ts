// What the sections share while a document is assessed, and the one way they add figures and checks.

import type { MaterialKey } from '@/lib/catalog/materials/labels';
import type { Design } from '@/lib/design/document';
import type { DesignSI } from '@/lib/design/read';
import type { Traced } from '@/lib/quantity/traced';
import type { UnitKey } from '@/lib/quantity/units';
import type {
  Check,
  CheckOrigins,
  CheckStatus,
  Curve,
  Direction,
  Figure,
  Mode,
  SectionKey,
} from './assessment';
import type { MaterialBook } from './book';
import type { Sheet } from './sheet';

/** The table that an assessment is worked on; each section reads the design and adds to the lists. */
export interface Work {
  readonly document: Design;
  readonly design: DesignSI;
  readonly sheet: Sheet;
  readonly book: MaterialBook;
  readonly figures: Figure[];
  readonly checks: Check[];
  readonly curves: Curve[];
}

/** Forces of a mesh or belt on one member at the peak torque, N; shocks are not in them. */
export interface MemberForces {
  readonly tangential: Traced;
  /** Along the line of centres: positive pushes the two axes apart, negative draws them together. */
  readonly radial: Traced;
  /** Along the member's own axis; 0 where the halves of a tooth balance. */
  readonly axial: Traced;
  /** Diameter of the circle at which the tangential and axial forces act, m. */
  readonly diameter: Traced;
  /** 1 where the contact lies on the side of the other axis, -1 beyond this member's own centre (pinion in a ring). */
  readonly side: 1 | -1;
}

/** What one end of a stage carries: on the shaft before it (input) or behind it (output). */
export interface MemberLoad {
  /** Driving torque at peak and hold, friction towards the output included, N m. */
  readonly torquePeak: Traced;
  readonly torqueHold: Traced;
  /** At the duty's output speed, rad/s. */
  readonly speed: Traced;
  /** Turns of this member for one turn of the output. */
  readonly turns: Traced;
  /** Material of the member where it meets its shaft; null when it is not entered. */
  readonly material: MaterialKey | null;
  /** The sentence says why they are not known. */
  readonly forces: MemberForces | string;
}

/** Play of a stage, rad. Below zero the teeth bind. A sentence says what an end of the tolerances lacks. */
export interface Backlash {
  readonly nominal: Traced;
  readonly least: Traced | string;
  readonly greatest: Traced | string;
}

/** One stage as shafts, hubs, bearings and stiffness see it. */
export interface StageLoads {
  /** Path of the stage. */
  readonly at: string;
  /** `Stage 3`, counted from the motor. */
  readonly place: string;
  readonly stage: DesignSI['train']['stages'][number];
  /** Input speed over output speed, without sign. */
  readonly ratio: Traced;
  readonly efficiency: Traced | null;
  /** Ratio of all stages after this one. */
  readonly after: Traced;
  readonly input: MemberLoad;
  readonly output: MemberLoad;
  /** Whether output and input turn opposite ways. */
  readonly flips: boolean;
  /** Whether the axes cross at a right angle (worm). */
  readonly crossed: boolean;
  /** Force on one planet's bearing at the peak, its speed on the pin and its turns for one turn of the output; null for other kinds. */
  readonly planet: { readonly radial: Traced; readonly speed: Traced; readonly turns: Traced } | null;
  /** Torsional stiffness of mesh or belt on the output member, N m/rad, or why it is not known. */
  readonly meshStiffness: Traced | string;
  /** Backlash of the stage at its own output member, or why it is not known. */
  readonly backlash: Backlash | string;
}

/** What a shaft hands to its bearings, at the peak torque without shocks, N. */
export interface ShaftReactions {
  /** Path of the shaft, e.g. `train.stages.k3f.shaft` or `train.motorShaft`. */
  readonly at: string;
  /** `Shaft behind stage 2`, `Motor shaft`. */
  readonly place: string;
  readonly shaft: DesignSI['train']['motorShaft'];
  /** Radial force on each bearing, or why it is not known. */
  readonly radialA: Traced | string;
  readonly radialB: Traced | string;
  /** Net thrust along the shaft, or why it is not known. */
  readonly axial: Traced | string;
  /** Speed of inner against outer ring at the duty's output speed, rad/s. */
  readonly speed: Traced;
  /** Turns for one turn of the output. */
  readonly turns: Traced;
}

/** What the train section hands to those after it. All SI. */
export interface TrainWork {
  /** Motor speed ÷ output speed, all stages. */
  readonly ratio: Traced;
  /** Efficiency from motor to output, bearings included; null when friction is not known. */
  readonly efficiency: Traced | null;
  /** The same with 0.7 for each stage whose friction is not known: what the motor is held to drive against. */
  readonly drivingEfficiency: Traced;
  /** Torque at the motor shaft that the peak and the holding torque ask for, losses of the train included. */
  readonly motorTorquePeak: Traced;
  readonly motorTorqueHold: Traced;
  /** Motor speed at the duty's output speed, rad/s. */
  readonly motorSpeed: Traced;
  /** Inertia of arm, tip mass and load at the output, kg m². */
  readonly outputInertia: Traced;
  /** What every stage asks of its shafts and hubs, in the order of the power flow. */
  readonly stages: readonly StageLoads[];
  /** Temperature inside the case, K, or why it is not known. */
  readonly surroundings: Traced | string;
}

/** Said wherever the motor is held to drive against a friction that is not known. */
export const frictionCaveat =
  'Where the friction of a stage is not known, an efficiency of 0.7 is assumed to the safe side.';

/** What the drive section hands to the rules and the headline. */
export interface DriveWork {
  /** Torque at the motor shaft that drive and supply can force at stall, N m; null when it cannot be told. */
  readonly stallTorque: Traced | null;
  /** The same at the output, N m, without train friction (the unsafe side when judging what breaks). */
  readonly forced: Traced | null;
}

interface FigureInput {
  readonly key: string;
  readonly section: SectionKey;
  readonly label: string;
  readonly symbol: string;
  readonly unit: UnitKey;
  readonly value: Traced | null;
  readonly better?: Direction;
  readonly missing?: string | null;
  readonly headline?: boolean;
}

/** The number itself, or null when there is none or the formula found none (outside its range). */
export function finite(traced: Traced | null): Traced | null {
  return traced !== null && Number.isFinite(traced.value) ? traced : null;
}

/** Adds a figure. A figure without a value says why in `missing`. */
export function addFigure(work: Work, f: FigureInput): void {
  const value = finite(f.value);
  work.figures.push({
    key: f.key,
    section: f.section,
    label: f.label,
    symbol: f.symbol,
    unit: f.unit,
    value: value?.value ?? null,
    better: f.better ?? 'neither',
    missing: value === null ? (f.missing ?? 'It cannot be worked out from what is entered.') : null,
    step: stepOf(value),
    origin: value?.from ?? null,
    headline: f.headline ?? false,
  });
}

/** What an earlier section has worked out, traced to where it came from; null where it is missing. */
export function workedFigure(work: Work, key: string): Traced | null {
  const figure = work.figures.find((f) => f.key === key);
  const value = figure?.value ?? null;
  const from = figure?.origin ?? null;
  return value === null || from === null ? null : { value, from };
}

interface CheckInput {
  readonly key: string;
  readonly section: SectionKey;
  readonly label: string;
  readonly mode: Mode;
  readonly unit: UnitKey;
  readonly demandLabel: string;
  readonly capacityLabel: string;
  readonly demand: Traced | null;
  readonly capacity: Traced | null;
  readonly required: number;
  readonly requiredFrom: string;
  /** Sentence shown when demand or capacity is null. */
  readonly missing?: string | null;
  readonly caveat?: string | null;
  /**
   * Present for an element whose limit is an output torque: the output torque that causes `demand`, and the power of
   * torque with which the demand grows (1 for tooth bending, 1/2 for Hertzian pressure, 2 for copper loss).
   */
  readonly torque?: { readonly at: Traced; readonly power: number };
  /** Capacity at the low and high end of the catalogue's range, SI. */
  readonly scatter?: { readonly low: number; readonly high: number } | null;
}

/** Adds a check: its factor, status, and the output torque at which the element reaches its limit. */
export function addCheck(work: Work, c: CheckInput): void {
  const demand = finite(c.demand);
  const capacity = finite(c.capacity);
  const factor = factorOf(demand, capacity);
  const status: CheckStatus = factor === null ? 'not assessed' : factor >= c.required ? 'holds' : 'below';
  const limit = (at: number | undefined) => torqueAt(c.torque, demand, at);
  work.checks.push({
    key: c.key,
    section: c.section,
    label: c.label,
    mode: c.mode,
    status,
    demandLabel: c.demandLabel,
    capacityLabel: c.capacityLabel,
    unit: c.unit,
    demand: demand?.value ?? null,
    capacity: capacity?.value ?? null,
    factor,
    required: c.required,
    requiredFrom: c.requiredFrom,
    holdsTo: factor === null ? null : limit(capacity?.value),
    holdsFrom: factor === null ? null : limit(c.scatter?.low),
    holdsUpTo: factor === null ? null : limit(c.scatter?.high),
    onLadder: c.torque !== undefined,
    missing: factor === null ? (c.missing ?? 'A value it needs is not entered.') : null,
    caveat: c.caveat ?? null,
    steps: stepsOf(demand, capacity),
    origins: {
      demand: demand?.from ?? null,
      capacity: capacity?.from ?? null,
      torque: originOf(c.torque),
    },
  });
}

function factorOf(demand: Traced | null, capacity: Traced | null): number | null {
  if (demand === null || capacity === null) return null;
  // No demand at all: the element is not loaded, and a factor without bound says nothing. It counts as a large one,
  // unless nothing is left to load: a winding that its moves alone bring to its limit holds no hold.
  const unloaded = capacity.value > 0 ? 1e6 : 0;
  const factor = demand.value <= 0 ? unloaded : Math.min(capacity.value / demand.value, 1e6);
  return Number.isFinite(factor) ? factor : null;
}

function torqueAt(
  torque: CheckInput['torque'],
  demand: Traced | null,
  capacity: number | undefined,
): number | null {
  if (torque === undefined || demand === null || capacity === undefined || demand.value <= 0) return null;
  const at = torque.at.value * (capacity / demand.value) ** (1 / torque.power);
  return Number.isFinite(at) ? at : null;
}

function originOf(torque: CheckInput['torque']): CheckOrigins['torque'] {
  if (torque === undefined || finite(torque.at) === null) return null;
  const { at, power } = torque;
  return { value: at.value, from: at.from, power };
}

function stepsOf(demand: Traced | null, capacity: Traced | null): readonly string[] {
  const steps: string[] = [];
  const one = stepOf(demand);
  const other = stepOf(capacity);
  if (one !== null) steps.push(one);
  if (other !== null) steps.push(other);
  return steps;
}

function stepOf(traced: Traced | null): string | null {
  return traced?.from.startsWith('step:') === true ? traced.from.slice('step:'.length) : null;
}

// What the sections share while a document is assessed, and the one way they add figures and checks.

import type { Design } from '@/lib/design/document';
import type { DesignSI } from '@/lib/design/read';
import type { Traced } from '@/lib/quantity/traced';
import type { UnitKey } from '@/lib/quantity/units';
import type { Check, CheckStatus, Curve, Direction, Figure, Mode, SectionKey } from './assessment';
import type { Sheet } from './sheet';

/** The table that an assessment is worked on; each section reads the design and adds to the lists. */
export interface Work {
  readonly document: Design;
  readonly design: DesignSI;
  readonly sheet: Sheet;
  readonly figures: Figure[];
  readonly checks: Check[];
  readonly curves: Curve[];
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
    headline: f.headline ?? false,
  });
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
    steps: [demand, capacity].flatMap((t) => stepOf(t) ?? []),
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

function stepOf(traced: Traced | null): string | null {
  return traced?.from.startsWith('step:') === true ? traced.from.slice('step:'.length) : null;
}

// What an assessment is: the shape that pages, comparison, review and the store read. Plain JSON.
import type { UnitKey } from '@/lib/quantity/units';

/** Sections in the order of the power flow; checks, figures and steps are grouped by them. */
export const sectionLabels = {
  duty: 'Duty',
  supply: 'Supply',
  motor: 'Motor',
  drive: 'Drive',
  gears: 'Teeth',
  shafts: 'Shafts',
  hubs: 'Hubs',
  bearings: 'Bearings',
  case: 'Case and screws',
  stiffness: 'Backlash and stiffness',
  output: 'Output',
  strike: 'Strike',
  sensor: 'Sensor',
  loop: 'Loop',
  faults: 'Faults',
  rig: 'Rig',
} as const;
export type SectionKey = keyof typeof sectionLabels;

/** How an element can fail; the word is shown beside its line on the ladder. */
export const modeLabels = {
  peak: 'static',
  life: 'life',
  heat: 'heat',
  current: 'current',
  voltage: 'voltage',
  slip: 'slip',
  travel: 'travel',
  wear: 'wear',
} as const;
export type Mode = keyof typeof modeLabels;

export type Direction = 'more' | 'less' | 'neither';

/** A number worth comparing. `value` is in SI; `unit` is the unit to show it in. */
export interface Figure {
  /** Stable path through ids, e.g. `train.stages.k3f.contactRatio`. */
  readonly key: string;
  readonly section: SectionKey;
  readonly label: string;
  readonly symbol: string;
  readonly unit: UnitKey;
  readonly value: number | null;
  /** Which way is for the better. */
  readonly better: Direction;
  /** Why there is no value; null when there is one. */
  readonly missing: string | null;
  /** Key of the worked step that gave it, or null. */
  readonly step: string | null;
  /** Where the value comes from, as an input of a step says it; null when there is none, or an old assessment did not keep it. */
  readonly origin: string | null;
  /** True for the few figures that stand at the head of a comparison. */
  readonly headline: boolean;
}

/** How the keys of those figures begin that are each a share of the output's error: drawn as bars side by side. */
export const errorShares = 'sensor.share.';

export type CheckStatus = 'holds' | 'below' | 'not assessed';

/** Demand against capacity. `demand` and `capacity` are in SI, shown in `unit`. */
export interface Check {
  /** Stable path through ids and mode, e.g. `train.stages.k3f.pinion.root.peak`. */
  readonly key: string;
  readonly section: SectionKey;
  /** The element in words with its place, e.g. `Stage 3 pinion, tooth root`. */
  readonly label: string;
  readonly mode: Mode;
  readonly status: CheckStatus;
  readonly demandLabel: string;
  readonly capacityLabel: string;
  readonly unit: UnitKey;
  readonly demand: number | null;
  readonly capacity: number | null;
  /** capacity ÷ demand in the sense that 1 is the limit; null when not assessed. */
  readonly factor: number | null;
  readonly required: number;
  /** Where the required factor comes from, in words. */
  readonly requiredFrom: string;
  /** Output torque at which this element reaches its limit (factor 1), N m; null when torque has no part in it. */
  readonly holdsTo: number | null;
  /** Scatter of `holdsTo` from the catalogue's ranges, N m; null when none is known. */
  readonly holdsFrom: number | null;
  readonly holdsUpTo: number | null;
  /** Whether it belongs on the ladder: an element whose limit is an output torque, assessed or not. */
  readonly onLadder: boolean;
  /** Why it is not assessed, in one sentence; null otherwise. */
  readonly missing: string | null;
  /** A value behind the result that rests on memory or judgement, in words; null when none does. */
  readonly caveat: string | null;
  /** Keys of the worked steps of demand, capacity and factor. */
  readonly steps: readonly string[];
  readonly origins: CheckOrigins;
}

/** Where the numbers of a check come from, each as an input of a worked step says it; null where there is no number, or an old assessment
 * did not keep it. */
export interface CheckOrigins {
  readonly demand: string | null;
  readonly capacity: string | null;
  /** The output torque that causes the demand, N m, and the power of torque with which the demand grows. */
  readonly torque: { readonly value: number; readonly from: string; readonly power: number } | null;
}

export type FindingClass = 'critical' | 'major' | 'minor';

/** A rule that fired. */
export interface Finding {
  /** `<rule>:<path>`: the same finding in two revisions has the same key. */
  readonly key: string;
  readonly rule: string;
  readonly class: FindingClass;
  /** Path of the field, part, check or figure that it speaks of. */
  readonly at: string;
  /** What is the case, with the numbers, in one or two sentences. */
  readonly text: string;
  /** What to do about it, in one sentence. */
  readonly advice: string;
  /** Why it matters and where the rule comes from. */
  readonly reason: string;
  readonly source: string;
}

export interface CurvePoint {
  readonly x: number;
  readonly y: number;
}

/** A drawn relation, e.g. output torque over speed. Values are in SI; units say how to show them. */
export interface Curve {
  readonly key: string;
  readonly section: SectionKey;
  readonly label: string;
  readonly xLabel: string;
  readonly xUnit: UnitKey;
  readonly yLabel: string;
  readonly yUnit: UnitKey;
  readonly lines: readonly { readonly label: string; readonly points: readonly CurvePoint[] }[];
  /** Points the duty asks for, marked on the plot. */
  readonly marks: readonly CurveMark[];
  /** What its lines are drawn from; empty where an old assessment did not keep it. */
  readonly inputs: readonly StepInput[];
}

/** A marked point of a curve; `from` says where its y comes from, as an input of a worked step does. */
export interface CurveMark extends CurvePoint {
  readonly label: string;
  readonly from?: string;
  /** What stands there on a shaft, for the sketch below its curve. */
  readonly stands?: 'bearing' | 'member';
}

/** One input of a worked step. */
export interface StepInput {
  readonly symbol: string;
  readonly value: number;
  /** `field:<path>`, `catalog:<row>`, `step:<key>` or `practice:<words>`. */
  readonly from: string;
}

/** One worked step: a formula with its numbers. */
export interface Step {
  /** Stable: where it was worked and what it gave, e.g. `train.stages.k3f.pinion.sigma_F`. */
  readonly key: string;
  readonly section: SectionKey;
  /** Path of the part it was worked for. */
  readonly at: string;
  /** Key of the formula in the library. */
  readonly formula: string;
  readonly inputs: readonly StepInput[];
  readonly value: number;
  /** A remark on the choice made here, or null. */
  readonly note: string | null;
}

/** The weakest link and what it means, as numbers; pages put it into words. */
export interface Headline {
  /** The check on the ladder with the least `holdsTo`; null when none could be assessed. */
  readonly weakest: string | null;
  readonly holdsTo: number | null;
  /** Output torque that the duty asks at its peak, N m. */
  readonly demanded: number;
  /** Output torque that motor and drive can force at stall, N m; null when it cannot be told. */
  readonly forced: number | null;
  readonly factor: number | null;
  readonly required: number | null;
  /** How many checks on the ladder are not assessed. */
  readonly notAssessed: number;
}

export interface Assessment {
  /** Version of the method that made it (lib/assess/method). */
  readonly method: string;
  readonly headline: Headline;
  readonly figures: readonly Figure[];
  readonly checks: readonly Check[];
  readonly findings: readonly Finding[];
  readonly curves: readonly Curve[];
  /** The worked sheet; empty when assessed without it. */
  readonly sheet: readonly Step[];
}

// Hubs and bearings worked alone: the two-stage actuator with torques and forces written down, not worked from its teeth.
import type { Check, Figure } from '@/lib/assess/assessment';
import { MaterialBook } from '@/lib/assess/book';
import { hubsSection } from '@/lib/assess/sections/hubs/hubs';
import { Sheet } from '@/lib/assess/sheet';
import type { MemberLoad, StageLoads, TrainWork, Work } from '@/lib/assess/work';
import type { Design } from '@/lib/design/document';
import { withValue } from '@/lib/design/path';
import { readSI } from '@/lib/design/read';
import type { Traced } from '@/lib/quantity/traced';
import { twoStage } from '../fixtures/two-stage';
import { plainTrain } from '../power/worked';

export const traced = (value: number): Traced => ({ value, from: 'practice:fixture of the tests' });

/** Parts put in by path, e.g. `{ 'output.armHub': { kind: 'key', diameter: 12, length: 20 } }`. */
export type Parts = Readonly<Record<string, unknown>>;

export function withParts(parts: Parts, base: Design = twoStage): Design {
  let document = base;
  for (const [path, part] of Object.entries(parts)) document = withValue(document, path, part);
  return document;
}

/** Torques at the peak behind stage 2, between the stages and at the motor; ratios 3 and 4, no losses. */
const torques = { output: 12, middle: 4, motor: 1 } as const;

function member(torque: number, hold: number, turns: number, material: MemberLoad['material']): MemberLoad {
  return {
    torquePeak: traced(torque),
    torqueHold: traced(hold),
    speed: traced(2 * turns),
    turns: traced(turns),
    material,
    forces: 'not needed here',
  };
}

/** The train of a two-stage document as the sections behind it see it. */
export function trainOf(document: Design, surroundings: number | string = 296.15): TrainWork {
  const design = readSI(document);
  const ends = [
    [torques.motor, torques.middle, 12, 3],
    [torques.middle, torques.output, 3, 1],
  ] as const;
  const stages = design.train.stages.map((stage, i): StageLoads => {
    const [T_1, T_2, before, behind] = ends[i] ?? [1, 1, 1, 1];
    if (!('pinion' in stage)) throw new Error('the fixture is of pairs');
    return {
      at: `train.stages.${stage.id}`,
      place: `Stage ${i + 1}`,
      stage,
      ratio: traced(before / behind),
      efficiency: traced(1),
      after: traced(behind),
      input: member(T_1, (T_1 * 5) / 12, before, stage.pinion.material),
      output: member(T_2, (T_2 * 5) / 12, behind, stage.wheel.material),
      flips: true,
      crossed: false,
      planet: null,
      meshStiffness: 'not needed here',
      backlash: 'not needed here',
    };
  });
  return {
    ...plainTrain(document),
    stages,
    surroundings: typeof surroundings === 'string' ? surroundings : traced(surroundings),
  };
}

export interface Judged {
  readonly work: Work;
  check(key: string): Check;
  figure(key: string): Figure;
}

export function workOf(document: Design): Work {
  const design = readSI(document);
  const book = new MaterialBook(design.coupons);
  return { document, design, sheet: new Sheet(true), book, figures: [], checks: [], curves: [] };
}

export function judged(work: Work): Judged {
  const one = <T extends { readonly key: string }>(list: readonly T[], key: string): T => {
    const found = list.find((item) => item.key === key);
    if (found === undefined) throw new Error(`nothing under ${key}`);
    return found;
  };
  return { work, check: (key) => one(work.checks, key), figure: (key) => one(work.figures, key) };
}

/** The hubs of the two-stage actuator with parts put in. */
export function hubs(parts: Parts, surroundings?: number | string): Judged {
  const document = withParts(parts);
  const work = workOf(document);
  hubsSection(work, trainOf(document, surroundings));
  return judged(work);
}

/** A steel shaft on ball bearings that nobody named. */
export const steelShaft = {
  kind: 'turning',
  material: 'steel_c45',
  diameter: 12,
  notch: null,
  shoulderDiameter: null,
  fillet: null,
  surface: null,
  span: null,
  drivenAt: null,
  drivingAt: null,
  locating: null,
  bearingA: { kind: 'unnamed' },
  bearingB: { kind: 'unnamed' },
} as const;

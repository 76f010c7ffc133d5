// The sections beside the teeth, worked on a design with a plain train, so that they can be judged on their own.
import { MaterialBook } from '@/lib/assess/book';
import { powerSections } from '@/lib/assess/sections/power';
import { Sheet } from '@/lib/assess/sheet';
import type { DriveWork, TrainWork, Work } from '@/lib/assess/work';
import type { Design } from '@/lib/design/document';
import { isPair } from '@/lib/design/parts/stage';
import { valueAt, withValue } from '@/lib/design/path';
import { readSI } from '@/lib/design/read';
import type { FieldValue } from '@/lib/design/walk';
import type { Traced } from '@/lib/quantity/traced';

/** Fields replaced by path, or parts whole, e.g. `{ 'supply.fuse': null, 'output.armHub': { kind: 'integral' } }`. */
export type Changes = Readonly<Record<string, FieldValue | object>>;

/** The document with fields replaced; the paths must exist. */
export function changed(document: Design, changes: Changes): Design {
  let copy = document;
  for (const [path, value] of Object.entries(changes)) {
    if (valueAt(copy, path) === undefined) throw new Error(`no field ${path}`);
    copy = withValue(copy, path, value);
  }
  return copy;
}

export interface Worked {
  readonly work: Work;
  readonly train: TrainWork;
  readonly drive: DriveWork;
  figure(key: string): Work['figures'][number];
  check(key: string): Work['checks'][number];
}

/** Ratio from the teeth, 97 % a stage; arm as a rod about its end. */
export function plainTrain(document: Design): TrainWork {
  const { duty, output, train } = document;
  const traced = (value: number): Traced => ({ value, from: 'practice:plain train of the tests' });
  const ratio = train.stages.reduce(
    (all, s) => (isPair(s) ? (all * s.wheel.teeth) / s.pinion.teeth : all),
    1,
  );
  const efficiency = 0.97 ** train.stages.length;
  const arm = duty.armLength / 1000;
  return {
    ratio: traced(ratio),
    efficiency: traced(efficiency),
    drivingEfficiency: traced(efficiency),
    motorTorquePeak: traced(duty.peakTorque / ratio / efficiency),
    motorTorqueHold: traced(duty.holdTorque / ratio / efficiency),
    motorSpeed: traced(((duty.outputSpeed * Math.PI) / 180) * ratio),
    outputInertia: traced(duty.loadInertia + duty.tipMass * arm ** 2 + (output.armMass * arm ** 2) / 3),
    stages: [],
    surroundings: traced(duty.ambient + 273.15),
  };
}

export function worked(document: Design, recording = true, train = plainTrain(document)): Worked {
  const sheet = new Sheet(recording);
  const design = readSI(document);
  const book = new MaterialBook(design.coupons);
  const work: Work = { document, design, sheet, book, figures: [], checks: [], curves: [] };
  const drive = powerSections(work, train);
  const one = <T extends { readonly key: string }>(list: readonly T[], key: string): T => {
    const found = list.find((item) => item.key === key);
    if (found === undefined) throw new Error(`nothing under ${key}`);
    return found;
  };
  return {
    work,
    train,
    drive,
    figure: (key) => one(work.figures, key),
    check: (key) => one(work.checks, key),
  };
}

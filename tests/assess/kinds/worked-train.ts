/** The train of a document worked on its own, so that stages can be judged without what stands around them. */
import { MaterialBook } from '@/lib/assess/book';
import { dutySection } from '@/lib/assess/sections/duty';
import { trainSection } from '@/lib/assess/sections/train';
import { Sheet } from '@/lib/assess/sheet';
import type { MemberForces, StageLoads, TrainWork, Work } from '@/lib/assess/work';
import type { Design } from '@/lib/design/document';
import { readSI } from '@/lib/design/read';
import type { Changes } from '../power/worked';
import { changed } from '../power/worked';

export interface WorkedTrain {
  readonly work: Work;
  readonly train: TrainWork;
  /** A figure's value in SI, or the sentence that says why it has none. */
  figure(key: string): number | string;
  check(key: string): Work['checks'][number];
  /** What a stage hands on, counted from the motor. */
  stage(i: number): StageLoads;
}

export function workTrain(document: Design, changes: Changes = {}): WorkedTrain {
  const whole = changed(document, changes);
  const design = readSI(whole);
  const sheet = new Sheet(true);
  const book = new MaterialBook(design.coupons);
  const work: Work = { document: whole, design, sheet, book, figures: [], checks: [], curves: [] };
  const train = trainSection(work, dutySection(work));
  const one = <T extends { readonly key: string }>(list: readonly T[], key: string): T => {
    const found = list.find((item) => item.key === key);
    if (found === undefined) throw new Error(`nothing under ${key}`);
    return found;
  };
  return {
    work,
    train,
    figure: (key) => {
      const { value, missing } = one(work.figures, key);
      return value ?? missing ?? '';
    },
    check: (key) => one(work.checks, key),
    stage: (i) => {
      const found = train.stages[i];
      if (found === undefined) throw new Error(`no stage ${i}`);
      return found;
    },
  };
}

/** The number of a figure; a test that needs it fails with the sentence when there is none. */
export function number(found: number | string): number {
  if (typeof found === 'string') throw new Error(found);
  return found;
}

export function forcesOf(forces: MemberForces | string): MemberForces {
  if (typeof forces === 'string') throw new Error(forces);
  return forces;
}

/** The document with its stages replaced. */
export function withStages(document: Design, stages: readonly Design['train']['stages'][number][]): Design {
  return { ...document, train: { ...document.train, stages: [...stages] } };
}

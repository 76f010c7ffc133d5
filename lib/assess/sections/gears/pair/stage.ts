// One stage while it is worked: its place in the train, its paths, and the two gears by name.

import { basicRack } from '@/lib/catalog/gears';
import type { DesignSI } from '@/lib/design/read';
import type { Traced } from '@/lib/quantity/traced';
import { cited } from '../../../sheet';

export type StageSI = DesignSI['train']['stages'][number];
export type GearSI = StageSI['pinion'];
export type Side = 'pinion' | 'wheel';
export const sides: readonly Side[] = ['pinion', 'wheel'];

/** Where a stage stands: `at` is its path, `place` its words, e.g. `Stage 3`, counted from the motor. */
export interface StagePlace {
  readonly at: string;
  readonly place: string;
  readonly stage: StageSI;
}

/** The stages of the design in the order of the power flow. */
export function placesOf(design: DesignSI): StagePlace[] {
  return design.train.stages.map((stage, i) => ({
    at: stagePath(stage.id),
    place: `Stage ${i + 1}`,
    stage,
  }));
}

export function stagePath(id: string): string {
  return `train.stages.${id}`;
}

export const rack = {
  addendum: cited(basicRack.addendum, 'addendum of the rack over the module'),
  dedendum: cited(basicRack.dedendum, 'dedendum of the rack over the module'),
  fillet: cited(basicRack.filletRadius, 'root fillet of the rack over the module'),
} as const satisfies Record<string, Traced>;

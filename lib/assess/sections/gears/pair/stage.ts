// One pair of gears while it is worked: its place in the train, its paths, and the two gears by name.

import { basicRack, ringFillet } from '@/lib/catalog/gears';
import type { PairStage } from '@/lib/design/parts/stage';
import type { DesignSI } from '@/lib/design/read';
import type { Read, Traced } from '@/lib/quantity/traced';
import { cited } from '../../../sheet';

export type StageSI = DesignSI['train']['stages'][number];
export type GearSI = Read<PairStage>['pinion'];
export type Side = 'pinion' | 'wheel';
export const sides: readonly Side[] = ['pinion', 'wheel'];

/** What an external pair is worked from: a stage of that kind, or two members of a set that mesh. */
export interface PairSI {
  readonly kind: 'spur' | 'helical' | 'doubleHelical';
  readonly module: Traced;
  readonly pressureAngle: Traced;
  readonly helixAngle: Traced;
  readonly faceWidth: Traced;
  /** Of a double-helical pair: the width where its halves meet. */
  readonly apexGap?: Traced | null;
  readonly centreDistance: Traced | null;
  readonly centreTolerance: Traced | null;
  readonly thinning: Traced | null;
  readonly thinningTolerance: Traced | null;
  readonly lubrication: PairStage['lubrication'];
  readonly pinion: GearSI;
  readonly wheel: GearSI;
}

/** Where a pair stands: `at` is its path, `place` its words, e.g. `Stage 3`, counted from the motor. */
export interface StagePlace {
  readonly at: string;
  readonly place: string;
  readonly stage: PairSI;
  /** What the pair and its gears are called where they are two members of a set. */
  readonly called?: PairNames;
}

export interface PairNames {
  /** `Stage 3 planet and ring`. */
  readonly pair: string;
  readonly gears: Readonly<Record<Side, GearName>>;
}

export interface GearName {
  /** Path, e.g. `train.stages.k3f.sun`. */
  readonly at: string;
  readonly words: string;
}

/** What a gear of the pair is called. */
export function nameOf({ at, called }: StagePlace, side: Side): GearName {
  return called?.gears[side] ?? { at: `${at}.${side}`, words: side };
}

/** The stages of the design in the order of the power flow. */
export function placesOf(
  design: DesignSI,
): { readonly at: string; readonly place: string; readonly stage: StageSI }[] {
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
  ringFillet: cited(ringFillet, 'root fillet of a ring over the module, tool unknown'),
} as const satisfies Record<string, Traced>;

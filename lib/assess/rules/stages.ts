// Walking the stages of a judged design: the stage, its place in words and its path.

import { property } from '@/lib/catalog/materials/materials';
import type { Gear } from '@/lib/design/parts/gears';
import { isPair, type PairStage, type Stage } from '@/lib/design/parts/stage';
import { type Side, sides, stagePath } from '../sections/gears/pair/stage';
import type { Judged, RawFinding } from './rule';

export interface StageAt {
  readonly stage: Stage;
  readonly at: string;
  /** `Stage 3`, counted from the motor. */
  readonly place: string;
}

export interface PairAt {
  readonly stage: PairStage;
  readonly at: string;
  readonly place: string;
}

export interface GearAt extends PairAt {
  readonly gear: Gear;
  readonly side: Side;
  readonly gearAt: string;
  /** `Stage 3 pinion`. */
  readonly name: string;
}

/** The findings of a rule that looks at one stage after the other. */
export function eachStage({ document }: Judged, look: (s: StageAt) => RawFinding | null): RawFinding[] {
  const found: RawFinding[] = [];
  document.train.stages.forEach((stage, i) => {
    const finding = look({ stage, at: stagePath(stage.id), place: `Stage ${i + 1}` });
    if (finding !== null) found.push(finding);
  });
  return found;
}

/** The findings of a rule that looks at one pair of pinion and wheel after the other. */
export function eachPair(judged: Judged, look: (s: PairAt) => RawFinding | null): RawFinding[] {
  return eachStage(judged, ({ stage, ...rest }) => (isPair(stage) ? look({ ...rest, stage }) : null));
}

/** The findings of a rule that looks at one gear of a pair after the other. */
export function eachGear({ document }: Judged, look: (g: GearAt) => RawFinding | null): RawFinding[] {
  const found: RawFinding[] = [];
  document.train.stages.forEach((stage, i) => {
    if (!isPair(stage)) return;
    for (const side of sides) {
      const at = stagePath(stage.id);
      const place = `Stage ${i + 1}`;
      const gear = stage[side];
      const finding = look({
        stage,
        at,
        place,
        gear,
        side,
        gearAt: `${at}.${side}`,
        name: `${place} ${side}`,
      });
      if (finding !== null) found.push(finding);
    }
  });
  return found;
}

/** The toothed members of a stage of any kind. */
export function gearsOf(stage: Stage): readonly Pick<Gear, 'material'>[] {
  switch (stage.kind) {
    case 'planetary':
      return [stage.sun, stage.planet, stage.ring];
    case 'belt':
      return [stage.driver, stage.driven];
    case 'worm':
      return [{ material: stage.wormMaterial }, stage.wormWheel];
    default:
      return [stage.pinion, stage.wheel];
  }
}

export function isMetal(gear: Pick<Gear, 'material'>): boolean {
  return property(gear.material, 'yield') !== undefined;
}

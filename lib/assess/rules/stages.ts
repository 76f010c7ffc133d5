// Walking the stages of a judged design: the stage, its place in words and its path.

import { property } from '@/lib/catalog/materials/materials';
import type { Gear, Stage } from '@/lib/design/parts/gears';
import { type Side, sides, stagePath } from '../sections/gears/pair/stage';
import type { Judged, RawFinding } from './rule';

export interface StageAt {
  readonly stage: Stage;
  readonly at: string;
  /** `Stage 3`, counted from the motor. */
  readonly place: string;
}

export interface GearAt extends StageAt {
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

/** The findings of a rule that looks at one gear after the other. */
export function eachGear({ document }: Judged, look: (g: GearAt) => RawFinding | null): RawFinding[] {
  const found: RawFinding[] = [];
  document.train.stages.forEach((stage, i) => {
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

export function isMetal(gear: Gear): boolean {
  return property(gear.material, 'yield') !== undefined;
}

// How much softer a part of the train is in the warmth of the case: by the material of it that keeps least.
import { warmStiffness } from '@/lib/calc/gears/backlash/wind-up';
import type { MaterialKey } from '@/lib/catalog/materials/labels';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import type { StageLoads, Work } from '../../work';
import { gearMaterial } from '../gears/service/materials';
import { retentionAt } from '../gears/service/retention';

/** The materials that give in a mesh; none for a belt, whose cords do not soften. */
export function materialsOf({ stage }: StageLoads): readonly MaterialKey[] {
  switch (stage.kind) {
    case 'belt':
      return [];
    case 'planetary':
      return [stage.sun.material, stage.planet.material, stage.ring.material];
    case 'worm':
      return [stage.wormMaterial, stage.wormWheel.material];
    default:
      return [stage.pinion.material, stage.wheel.material];
  }
}

const cold = practice(1, 'metal and cords keep their stiffness');

/** The stiffness at the output in the case’s warmth, or why it is not known. */
export function warmed(
  work: Work,
  at: string,
  materials: readonly MaterialKey[],
  surroundings: Traced | string,
  k: Traced,
): Traced | string {
  let least = cold;
  for (const key of new Set(materials)) {
    const m = gearMaterial(work.book, { material: key, build: 'flat' });
    if (m.kind === 'metal') continue;
    const left = retentionAt(work, { section: 'stiffness', at, as: key }, m, surroundings);
    if (typeof left === 'string') return tooWarm(surroundings, m.name, left);
    if (left.factor.value < least.value) least = left.factor;
  }
  if (!(least.value > 0)) return 'In the warmth of the case no stiffness is left.';
  return least === cold ? k : work.sheet.work('stiffness', at, warmStiffness, { k, f_T: least }, 'k_warm');
}

function tooWarm(surroundings: Traced | string, name: string, reason: string): string {
  return typeof surroundings === 'string'
    ? reason
    : `The case is warmer than 80 °C, beyond what the catalogue knows of ${name}.`;
}

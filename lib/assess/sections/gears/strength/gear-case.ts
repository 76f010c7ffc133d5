// What the checks of one gear are worked from, and what it is called.
import type { Traced } from '@/lib/quantity/traced';
import type { StageGeometry } from '../pair/geometry';
import type { Side } from '../pair/stage';
import type { StageLoad } from '../service/loads';
import type { GearMaterial } from '../service/materials';
import type { Retention } from '../service/retention';

export interface RootMeshFactors {
  readonly Y_eps: Traced;
  readonly Y_beta: Traced;
}

/** What the checks of one gear need; anything not known is the sentence that says why. */
export interface GearCase {
  readonly geometry: StageGeometry;
  readonly side: Side;
  readonly material: GearMaterial;
  readonly mate: GearMaterial;
  readonly load: StageLoad;
  readonly shares: RootMeshFactors | null;
  readonly atRoot: Retention | string;
  readonly atFlank: Retention | string;
  /** Words for the gear where `Stage 3 pinion` will not do. */
  readonly name?: string;
  /** Diameter of the hole in its body; null where it is not entered, absent where the body has none. */
  readonly bore?: Traced | null;
  /** Bends both ways at every turn: a planet or an idler. */
  readonly idler?: true;
  /** A ring gear: its rim lies outside the teeth. */
  readonly ring?: true;
  /** One of an internal pair, ring or not. */
  readonly internal?: true;
}

/** Path of the gear, e.g. `train.stages.k3f.pinion`. */
export function pathOf({ geometry, side }: GearCase): string {
  return geometry[side].at;
}

export function nameOf({ geometry, side, name }: GearCase): string {
  return name ?? `${geometry.place} ${geometry[side].name}`;
}

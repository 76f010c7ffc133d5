// What both checks of stress start from, and what each is made of.
import type { Traced } from '@/lib/quantity/traced';
import type { Work } from '../../work';
import type { Line, NamedShaft } from './line';
import type { LoadedStations } from './loaded';
import type { ShaftMaterial } from './material';
import type { Notch } from './notch';

export interface StressCall {
  readonly work: Work;
  readonly line: Line;
  readonly shaft: NamedShaft;
  readonly stations: LoadedStations;
  readonly material: ShaftMaterial;
  readonly notch: Notch;
}

/** What a check of stress is made of, and the least diameter that would pass it. */
export interface StressWork {
  readonly required: { readonly factor: number; readonly from: string };
  /** Null without a diameter. */
  readonly demand: Traced | null;
  readonly capacity: Traced | null;
  /** Output torque that causes the demand, N m. */
  readonly at: Traced;
  readonly caveat: string | null;
  readonly scatter: { readonly low: number; readonly high: number } | null;
  readonly leastDiameter: Traced;
}

const tried =
  'The torque either way, helices of either hand and the arm anywhere: the worst of these cases counts.';
const atTip = 'The output torque is taken as one force at the tip of the arm, its weight with it.';
const crossed = 'Behind a worm the directions are read along the shaft of its wheel.';

/** Said of every shaft: the document does not tell which way its loads run. */
export function triedCaveat({ members }: Line): string {
  const has = (kind: string) => members.filter(({ push }) => typeof push !== 'string' && push.kind === kind);
  const meshes = has('mesh');
  const behindWorm = meshes.some(({ key, end }) => key === 'driven' && end?.loads.crossed === true);
  return [
    tried,
    ...(has('arm').length > 0 ? [atTip] : []),
    ...(behindWorm && meshes.length > 1 ? [crossed] : []),
  ].join(' ');
}

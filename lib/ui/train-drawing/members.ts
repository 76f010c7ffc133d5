// What the drawing of a train is made of: the members of each stage with their circles, in metres, as the sheet worked them.
import type { Figure, Step } from '@/lib/assess/assessment';
import type { Stage } from '@/lib/design/parts/stage';

/** A member about its axis. */
export interface Member {
  readonly name: string;
  /** Which of the stage's two axes it turns about; planets turn about their own, at `orbit` from the axis. */
  readonly on: 'input' | 'output';
  /** Reference circle, m. */
  readonly diameter: number;
  /** Tip circle, m; null for what has none or none that is known. */
  readonly tip: number | null;
  readonly orbit?: { readonly radius: number; readonly count: number };
  /** Seen edge-on: half of what is drawn is its face width, m. */
  readonly edge?: number;
}

export interface StageMembers {
  /** `Stage 2`. */
  readonly place: string;
  readonly kind: Stage['kind'];
  readonly members: readonly Member[];
  /** From input axis to output axis, m. */
  readonly distance: number;
  /** Degrees, 0 to the right, 90 upwards; null when it is not entered. */
  readonly direction: number | null;
}

/** Lengths in metres by the key of the step or figure that gave them. */
type Lengths = ReadonlyMap<string, number>;

/** Lengths that the sheet worked or shows. */
export function lengthsOf(sheet: readonly Step[], figures: readonly Figure[]): Lengths {
  const found = new Map(sheet.map((s) => [s.key, s.value]));
  for (const { key, value } of figures) if (value !== null) found.set(key, value);
  return found;
}

/** The members of a stage; null when a length that its drawing needs is not known. */
export function membersOf(stage: Stage, index: number, lengths: Lengths): StageMembers | null {
  const at = `train.stages.${stage.id}`;
  const length = (key: string) => lengths.get(`${at}.${key}`) ?? null;
  const shape = shapeOf(stage, length);
  if (shape === null) return null;
  const direction = stage.kind === 'planetary' ? 0 : stage.direction;
  return { place: `Stage ${index + 1}`, kind: stage.kind, direction, ...shape };
}

type Shape = Pick<StageMembers, 'members' | 'distance'>;
type Length = (key: string) => number | null;

function shapeOf(stage: Stage, length: Length): Shape | null {
  switch (stage.kind) {
    case 'planetary':
      return planetary(stage.planets, length);
    case 'belt':
      return belt(stage.centreDistance, length);
    case 'worm':
      return worm(stage.wormDiameter, stage.faceWidth, length);
    default:
      return pair(stage.centreDistance, length);
  }
}

function circle(name: string, key: string, on: Member['on'], length: Length): Member | null {
  const diameter = length(`${key}.d`);
  return diameter === null ? null : { name, on, diameter, tip: length(`${key}.tipDiameter`) };
}

/** The entered centre distance, mm, goes before the one the teeth ask for. */
function pair(entered: number | null, length: Length): Shape | null {
  const distance = entered === null ? length('a_w') : entered / 1e3;
  const pinion = circle('pinion', 'pinion', 'input', length);
  const wheel = circle('wheel', 'wheel', 'output', length);
  if (distance === null || pinion === null || wheel === null) return null;
  return { members: [pinion, wheel], distance };
}

function planetary(count: number, length: Length): Shape | null {
  const radius = length('sunMesh.a_w');
  const [sun, planet, ring] = (['sun', 'planet', 'ring'] as const).map((m) => circle(m, m, 'input', length));
  if (radius === null || sun == null || planet == null || ring == null) return null;
  const planets = { ...planet, name: count === 1 ? 'planet' : `${count} planets`, orbit: { radius, count } };
  return { members: [sun, planets, ring], distance: 0 };
}

function belt(entered: number | null, length: Length): Shape | null {
  const driver = circle('driving pulley', 'driver', 'input', length);
  const driven = circle('driven pulley', 'driven', 'output', length);
  if (entered === null || driver === null || driven === null) return null;
  return { members: [driver, driven], distance: entered / 1e3 };
}

/** Seen along the worm, its wheel stands edge-on. */
function worm(diameter: number, face: number, length: Length): Shape | null {
  const [distance, wheel] = [length('centreDistance'), length('wormWheel.diameter')];
  if (distance === null || wheel === null) return null;
  return {
    members: [
      { name: 'worm', on: 'input', diameter: diameter / 1e3, tip: null },
      { name: 'worm wheel', on: 'output', diameter: wheel, tip: null, edge: face / 1e3 },
    ],
    distance,
  };
}

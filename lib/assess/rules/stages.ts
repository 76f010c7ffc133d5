// Walking the stages of a judged design: the stage, its place in words and its path.

import { property } from '@/lib/catalog/materials/materials';
import type { Gear } from '@/lib/design/parts/gears';
import { isPair, type PairStage, type Stage } from '@/lib/design/parts/stage';
import { stagePath } from '../sections/gears/pair/stage';
import { once } from './once';
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

export interface GearAt {
  readonly at: string;
  readonly place: string;
  readonly gear: Gear;
  readonly gearAt: string;
  /** `Stage 3 pinion`. */
  readonly name: string;
  /** What it meshes with, in words. */
  readonly mate: string;
  /** Module in mm; axial for a worm wheel. */
  readonly module: number;
}

/** One mesh of two gears; a planetary set has two. */
export interface MeshAt {
  /** Path of its figures. */
  readonly at: string;
  readonly stageAt: string;
  readonly place: string;
  readonly lubrication: PairStage['lubrication'];
  readonly gears: readonly [one: Gear, other: Gear];
  /** The two gears in words: `pinion and wheel`. */
  readonly words: string;
  readonly internal: boolean;
  readonly module: number;
}

/** The findings of a rule that looks at one stage after the other. */
export function eachStage(judged: Judged, look: (s: StageAt) => RawFinding | null): RawFinding[] {
  return foundIn(stagesAt(judged), look);
}

const stagesAt = once(({ document }): readonly StageAt[] =>
  document.train.stages.map((stage, i) => ({ stage, at: stagePath(stage.id), place: `Stage ${i + 1}` })),
);

/** The findings of a rule that looks at one pair of pinion and wheel after the other. */
export function eachPair(judged: Judged, look: (s: PairAt) => RawFinding | null): RawFinding[] {
  return eachStage(judged, ({ stage, at, place }) => (isPair(stage) ? look({ stage, at, place }) : null));
}

/** The findings of a rule that looks at one gear after the other, worm wheels and the members of sets among them. */
export function eachGear(judged: Judged, look: (g: GearAt) => RawFinding | null): RawFinding[] {
  return foundIn(gearsAt(judged), look);
}

function foundIn<T>(items: readonly T[], look: (item: T) => RawFinding | null): RawFinding[] {
  const found: RawFinding[] = [];
  for (const item of items) {
    const finding = look(item);
    if (finding !== null) found.push(finding);
  }
  return found;
}

const gearsAt = once(({ document }): readonly GearAt[] =>
  document.train.stages.flatMap((stage, i) => {
    const at = stagePath(stage.id);
    const place = `Stage ${i + 1}`;
    return membersOf(stage).map(({ path, gear, words, mate, module }) => ({
      at,
      place,
      gear,
      gearAt: `${at}.${path}`,
      name: `${place} ${words}`,
      mate,
      module,
    }));
  }),
);

interface Member extends Pick<GearAt, 'gear' | 'mate' | 'module'> {
  readonly path: string;
  readonly words: string;
}

function membersOf(stage: Stage): readonly Member[] {
  if (isPair(stage)) {
    const { pinion, wheel, module } = stage;
    const other = stage.kind === 'internal' ? 'ring' : 'wheel';
    return [
      { path: 'pinion', gear: pinion, words: 'pinion', mate: other, module },
      { path: 'wheel', gear: wheel, words: other, mate: 'pinion', module },
    ];
  }
  if (stage.kind === 'planetary') {
    const { sun, planet, ring, module } = stage;
    return [
      { path: 'sun', gear: sun, words: 'sun', mate: 'planet', module },
      { path: 'planet', gear: planet, words: 'planet', mate: 'sun', module },
      { path: 'ring', gear: ring, words: 'ring', mate: 'planet', module },
    ];
  }
  if (stage.kind === 'worm')
    return [
      {
        path: 'wormWheel',
        gear: stage.wormWheel,
        words: 'worm wheel',
        mate: 'worm',
        module: stage.axialModule,
      },
    ];
  return [];
}

/** The findings of a rule that looks at one mesh of two gears after the other. */
export function eachMesh(judged: Judged, look: (m: MeshAt) => RawFinding | null): RawFinding[] {
  return foundIn(meshesAt(judged), look);
}

const meshesAt = once(({ document }): readonly MeshAt[] =>
  document.train.stages.flatMap((stage, i) => meshesOf(stage, stagePath(stage.id), `Stage ${i + 1}`)),
);

function meshesOf(stage: Stage, stageAt: string, place: string): readonly MeshAt[] {
  if (isPair(stage)) {
    const { pinion, wheel, lubrication, module } = stage;
    const internal = stage.kind === 'internal';
    const words = internal ? 'pinion and ring' : 'pinion and wheel';
    return [{ at: stageAt, stageAt, place, lubrication, gears: [pinion, wheel], words, internal, module }];
  }
  if (stage.kind !== 'planetary') return [];
  const { sun, planet, ring, lubrication, module } = stage;
  const common = { stageAt, lubrication, module };
  return [
    {
      ...common,
      at: `${stageAt}.sunMesh`,
      place: `${place} sun and planet`,
      gears: [sun, planet],
      words: 'sun and planet',
      internal: false,
    },
    {
      ...common,
      at: `${stageAt}.ringMesh`,
      place: `${place} planet and ring`,
      gears: [planet, ring],
      words: 'planet and ring',
      internal: true,
    },
  ];
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

// What a new item or a new kind of stage begins with: plain values that a person then changes.
import type { Design } from './document';
import type { Stage, StageKind } from './parts/stage';

const gear = {
  shift: 0,
  material: 'petg_fdm',
  build: 'flat',
  solidFraction: 100,
  rim: null,
} as const;
const behind = {
  inputHub: { kind: 'unnamed' },
  outputHub: { kind: 'unnamed' },
  shaft: { kind: 'unnamed' },
  direction: null,
} as const;
const play = { centreTolerance: null, thinning: null, thinningTolerance: null } as const;
const common = { id: 'new', name: '' } as const;
const teeth = { module: 1.5, pressureAngle: 20, faceWidth: 15, lubrication: 'grease' } as const;
const pair = {
  ...common,
  ...teeth,
  helixAngle: 0,
  centreDistance: null,
  pinion: { ...gear, teeth: 17 },
  wheel: { ...gear, teeth: 51 },
  ...play,
  ...behind,
} as const;

/** One stage of every kind, from which a change of kind takes what the old kind had no field for. */
export const stageStarts: { readonly [K in StageKind]: Extract<Stage, { readonly kind: K }> } = {
  spur: { ...pair, kind: 'spur' },
  helical: { ...pair, kind: 'helical', helixAngle: 15 },
  doubleHelical: { ...pair, kind: 'doubleHelical', helixAngle: 25, apexGap: null },
  internal: { ...pair, kind: 'internal', wheel: { ...gear, teeth: 68 } },
  planetary: {
    ...common,
    ...teeth,
    kind: 'planetary',
    helixAngle: 0,
    centreDistance: null,
    fixed: 'ring',
    planets: 3,
    floating: false,
    sun: { ...gear, teeth: 18 },
    planet: { ...gear, teeth: 27 },
    ring: { ...gear, teeth: 72 },
    carrierMaterial: null,
    planetBearing: { kind: 'unnamed' },
    ...play,
    ...behind,
  },
  belt: {
    ...common,
    kind: 'belt',
    profile: 't5',
    width: 16,
    driver: { teeth: 16, material: 'al_6061_t6' },
    driven: { teeth: 48, material: 'al_6061_t6' },
    centreDistance: null,
    tension: null,
    rigidity: null,
    ...behind,
  },
  worm: {
    ...common,
    pressureAngle: 20,
    faceWidth: 15,
    lubrication: 'grease',
    kind: 'worm',
    starts: 2,
    wormDiameter: 20,
    axialModule: 1.5,
    wormMaterial: 'steel_c45',
    friction: null,
    wormWheel: { ...gear, teeth: 40, material: 'pom_machined', build: 'solid' },
    ...behind,
  },
};

/** The lists a person may lengthen: path → what a new item begins with, its id aside. */
export const itemStarts = {
  'train.stages': stageStarts.spur,
  'duty.loads': { id: 'new', name: '', share: 50, torque: 1, bending: 'oneWay' },
} as const satisfies {
  readonly 'train.stages': Stage;
  readonly 'duty.loads': Design['duty']['loads'][number];
};

export type ListPath = keyof typeof itemStarts;

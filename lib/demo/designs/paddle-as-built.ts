// Shafts, hubs, bearings, screws and stops of the paddle lifter, as Isa measured them for revision B.
import type { Edit } from '@/lib/design/edit';
import { ball, screwed, turning } from '@/lib/design/starters/parts';
import { describe } from './demo-design';

const cut = { centreTolerance: 0.08, thinning: 0.12, thinningTolerance: 0.05 } as const;

export const asBuilt: readonly Edit[] = [
  ...describe(
    'train.motorShaft',
    turning({
      diameter: 8,
      span: 40,
      drivenAt: 20,
      drivingAt: -20,
      notch: 'keyseat',
      bearingA: ball('608', 'metal'),
      bearingB: ball('608', 'metal'),
    }),
  ),
  ...describe('train.stages.motor', {
    ...cut,
    pinion: { rim: 4 },
    wheel: { rim: 20 },
    inputHub: { kind: 'key', diameter: 8, length: 24 },
    outputHub: { kind: 'polygon', diameter: 18, length: 28, profile: 'hexagon' },
    shaft: turning({
      diameter: 12,
      span: 100,
      drivenAt: 24,
      drivingAt: 68,
      bearingA: ball('6201', 'metal'),
      bearingB: ball('6201', 'metal'),
    }),
    direction: 60,
    apexGap: 3,
  }),
  ...describe('train.stages.second', {
    ...cut,
    pinion: { rim: 6 },
    wheel: { rim: 24 },
    inputHub: { kind: 'polygon', diameter: 12, length: 40, profile: 'square' },
    outputHub: { kind: 'polygon', diameter: 20, length: 40, profile: 'square' },
    shaft: turning({
      diameter: 17,
      span: 130,
      drivenAt: 30,
      drivingAt: 90,
      bearingA: ball('6203', 'metal'),
      bearingB: ball('6203', 'metal'),
    }),
    direction: -30,
    apexGap: 3,
  }),
  ...describe('train.stages.third', {
    ...cut,
    pinion: { rim: 6 },
    wheel: { rim: 30 },
    inputHub: {
      kind: 'clamp',
      diameter: 17,
      length: 50,
      screw: 'M4',
      screwClass: '8.8',
      count: 2,
      screwTorque: 2.4,
    },
    outputHub: { kind: 'spline', diameter: 34, length: 54, splineTeeth: 16, toothHeight: 2.2 },
    shaft: turning({
      diameter: 25,
      span: 190,
      drivenAt: 42,
      drivingAt: 134,
      bearingA: ball('6205', 'metal'),
      bearingB: ball('6205', 'metal'),
    }),
    direction: 20,
    apexGap: 4,
  }),
  ...describe('train.stages.rack', {
    ...cut,
    pinion: { rim: 10 },
    wheel: { rim: 44 },
    inputHub: { kind: 'spline', diameter: 34, length: 76, splineTeeth: 16, toothHeight: 2.2 },
    outputHub: { kind: 'spline', diameter: 56, length: 78, splineTeeth: 20, toothHeight: 3 },
    shaft: turning({
      diameter: 30,
      span: 170,
      drivenAt: 80,
      drivingAt: 195,
      bearingA: ball('6206', 'metal'),
      bearingB: ball('6206', 'metal'),
    }),
    direction: 0,
    apexGap: 6,
  }),
  ...describe('case', {
    material: 'al_6061_t6',
    layers: 'solid',
    split: 'across',
    caseScrews: screwed({
      size: 'M6',
      count: 10,
      circle: 380,
      torque: 7,
      into: 'metal',
      engagement: 12,
      clamped: 12,
      head: 12,
    }),
    motorScrews: screwed({
      size: 'M4',
      count: 4,
      circle: 44,
      torque: 1.6,
      into: 'metal',
      engagement: 8,
      clamped: 10,
      head: 9,
    }),
  }),
  ...describe('output', {
    armMaterial: 'steel_c45',
    armHub: {
      kind: 'clamp',
      diameter: 30,
      length: 40,
      screw: 'M6',
      screwClass: '8.8',
      count: 2,
      screwTorque: 9,
    },
    armStiffness: 20000,
    stopRadius: 100,
    stopStiffness: 80,
    bufferTravel: 80,
  }),
  ...describe('rig', {
    clampCount: 4,
    clampForce: 4000,
    friction: 0.3,
    clampRadius: 200,
    footing: 300,
    mass: 68,
  }),
];

/** Revision C: what slipped is joined by its shape. */
export const hubsChanged: readonly Edit[] = [
  ...describe('train.stages.third.inputHub', {
    kind: 'polygon',
    diameter: 17,
    length: 52,
    profile: 'square',
  }),
  ...describe('output.armHub', { kind: 'key', diameter: 30, length: 50 }),
];

// Shafts, hubs, bearings, screws and stops of the shutter drive, as Tam measured them on the bench for revision C.
import type { Edit } from '@/lib/design/edit';
import { ball, screwed, turning } from '@/lib/design/starters/parts';
import { describe } from './demo-design';

const cut = { centreTolerance: 0.1, thinning: 0.1, thinningTolerance: 0.05 } as const;

export const asItStands: readonly Edit[] = [
  ...describe(
    'train.motorShaft',
    turning({
      diameter: 6,
      span: 30,
      drivenAt: 15,
      drivingAt: -14,
      notch: 'flat',
      bearingA: ball('626', 'metal'),
      bearingB: ball('626', 'metal'),
    }),
  ),
  ...describe('train.stages.mot', {
    ...cut,
    pinion: { rim: 5 },
    wheel: { rim: 20 },
    inputHub: { kind: 'setScrew', diameter: 6, screw: 'M3', count: 1, point: 'cup' },
    outputHub: { kind: 'polygon', diameter: 16, length: 16, profile: 'hexagon' },
    shaft: turning({
      diameter: 10,
      span: 70,
      drivenAt: 18,
      drivingAt: 46,
      bearingA: ball('6000', 'printed'),
      bearingB: ball('6000', 'printed'),
    }),
    direction: 90,
  }),
  ...describe('train.stages.mid', {
    ...cut,
    pinion: { rim: 5 },
    wheel: { rim: 24 },
    inputHub: { kind: 'polygon', diameter: 10, length: 22, profile: 'square' },
    outputHub: { kind: 'polygon', diameter: 16, length: 22, profile: 'square' },
    shaft: turning({
      diameter: 12,
      span: 90,
      drivenAt: 22,
      drivingAt: 60,
      bearingA: ball('6001', 'printed'),
      bearingB: ball('6001', 'printed'),
    }),
    direction: 30,
  }),
  ...describe('train.stages.out', {
    ...cut,
    pinion: { rim: 8 },
    wheel: { rim: 30 },
    inputHub: { kind: 'polygon', diameter: 12, length: 34, profile: 'square' },
    outputHub: {
      kind: 'flange',
      screwCircle: 64,
      screw: 'M5',
      screwClass: '8.8',
      count: 6,
      screwTorque: 4,
      thickness: 12,
    },
    shaft: turning({
      diameter: 17,
      span: 70,
      drivenAt: 35,
      drivingAt: 92,
      bearingA: ball('6003', 'printed'),
      bearingB: ball('6003', 'printed'),
    }),
    direction: -20,
  }),
  ...describe('case', {
    material: 'petg_fdm',
    layers: 'within',
    split: 'across',
    caseScrews: screwed({
      size: 'M5',
      count: 8,
      circle: 220,
      torque: 2.5,
      into: 'nut',
      engagement: 4.7,
      clamped: 90,
      head: 20,
    }),
    motorScrews: screwed({
      size: 'M4',
      count: 4,
      circle: 30,
      torque: 1.4,
      into: 'metal',
      engagement: 7,
      clamped: 8,
      head: 16,
    }),
  }),
  ...describe('output', {
    armMaterial: 'steel_c45',
    armHub: { kind: 'setScrew', diameter: 17, screw: 'M5', count: 1, point: 'cup' },
    armStiffness: 9000,
    stopRadius: 60,
    stopStiffness: 8,
    bufferTravel: 12,
  }),
  ...describe('rig', {
    clampCount: 4,
    clampForce: 3000,
    friction: 0.3,
    clampRadius: 140,
    footing: 180,
    mass: 9,
  }),
];

// What Tam described of the stage-trap lift for revision C: shafts, hubs, bearings and screws, but neither the joint of the
// drum nor what the platform strikes.
import type { Edit } from '@/lib/design/edit';
import { ball, screwed, turning } from '@/lib/design/starters/parts';
import { describe } from './demo-design';

const cut = { centreTolerance: 0.1, thinning: 0.15, thinningTolerance: 0.05 } as const;

export const asBuilt: readonly Edit[] = [
  ...describe(
    'train.motorShaft',
    turning({
      diameter: 8,
      span: 40,
      drivenAt: 20,
      drivingAt: -16,
      notch: 'keyseat',
      locating: 'thrust',
      bearingA: ball('608', 'metal'),
      bearingB: ball('608', 'metal'),
    }),
  ),
  ...describe('train.stages.in', {
    ...cut,
    pinion: { rim: 4 },
    wheel: { rim: 24 },
    inputHub: { kind: 'key', diameter: 8, length: 18 },
    outputHub: { kind: 'polygon', diameter: 18, length: 22, profile: 'hexagon' },
    shaft: turning({
      diameter: 12,
      span: 84,
      drivenAt: 20,
      drivingAt: 54,
      locating: 'thrust',
      bearingA: ball('6201', 'printed'),
      bearingB: ball('6201', 'printed'),
    }),
    direction: 45,
  }),
  ...describe('train.stages.lay', {
    ...cut,
    pinion: { rim: 8 },
    wheel: { rim: 36 },
    inputHub: { kind: 'polygon', diameter: 12, length: 32, profile: 'square' },
    outputHub: { kind: 'spline', diameter: 28, length: 32, splineTeeth: 14, toothHeight: 2 },
    shaft: turning({
      diameter: 17,
      span: 96,
      drivenAt: 26,
      drivingAt: 68,
      locating: 'thrust',
      bearingA: ball('6203', 'printed'),
      bearingB: ball('6203', 'printed'),
    }),
    direction: -45,
  }),
  ...describe('train.stages.second', {
    ...cut,
    pinion: { rim: 18 },
    wheel: { rim: 30 },
    inputHub: { kind: 'spline', diameter: 28, length: 32, splineTeeth: 14, toothHeight: 2 },
    outputHub: { kind: 'spline', diameter: 34, length: 32, splineTeeth: 16, toothHeight: 2.2 },
    shaft: turning({
      diameter: 20,
      span: 120,
      drivenAt: 26,
      drivingAt: 80,
      locating: 'shoulder',
      bearingA: ball('6204', 'printed'),
      bearingB: ball('6204', 'printed'),
    }),
    direction: 45,
  }),
  ...describe('train.stages.drum', {
    ...cut,
    pinion: { rim: 10 },
    wheel: { rim: 48 },
    inputHub: { kind: 'spline', diameter: 34, length: 48, splineTeeth: 16, toothHeight: 2.2 },
    outputHub: { kind: 'spline', diameter: 50, length: 48, splineTeeth: 20, toothHeight: 3 },
    shaft: turning({
      diameter: 25,
      span: 110,
      drivenAt: 40,
      drivingAt: 160,
      locating: 'shoulder',
      bearingA: ball('6205', 'printed'),
      bearingB: ball('6205', 'printed'),
    }),
    direction: 0,
  }),
  ...describe('case', {
    material: 'pc_fdm',
    layers: 'within',
    split: 'across',
    caseScrews: screwed({
      size: 'M5',
      count: 14,
      circle: 330,
      torque: 2.5,
      into: 'nut',
      engagement: 4.7,
      clamped: 80,
      head: 20,
    }),
    motorScrews: { kind: 'unnamed' },
  }),
];

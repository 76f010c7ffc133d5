// The slewing foot of the slipway derrick: toothed belt, planetary set and a printed ring about the mast.
import type { Design } from '@/lib/design/document';
import { slew } from '@/lib/design/starters/slew';
import { type DemoDesign, describe, set } from './demo-design';

const base: Design = {
  ...slew,
  duty: {
    ...slew.duty,
    peakTorque: 48,
    holdTorque: 12,
    holdTime: 60,
    outputSpeed: 30,
    travel: 160,
    moveAngle: 110,
    moveTime: 8,
    restTime: 45,
    lifeCycles: 6000,
    loads: [
      { id: 'gust', name: 'Against a gust', share: 5, torque: 48, bending: 'bothWays' },
      { id: 'loaded', name: 'With a dinghy', share: 35, torque: 30, bending: 'bothWays' },
      { id: 'empty', name: 'Empty hook', share: 60, torque: 14, bending: 'bothWays' },
    ],
    ambient: 12,
    loadInertia: 1.2,
    armLength: 1100,
    tipMass: 4,
  },
  output: { ...slew.output, armMass: 4.5, armCentre: 520, stopTravel: 172 },
  loop: { ...slew.loop, rate: 200, commandBits: 12, latency: 8 },
  rig: { ...slew.rig, held: 'bolts', reach: 1600 },
};

export const derrick: DemoDesign = {
  title: 'Derrick slewing foot',
  author: 'bran',
  base,
  testedFrom: 1,
  revisions: [
    {
      author: 'bran',
      changeNote:
        'First issue: belt from the motor, planets, and the ring about the mast. Boom and stops as they stand.',
      edits: [],
    },
    {
      author: 'bran',
      changeNote:
        'Worked with the club’s own coupon tests: our PA12 is weaker than the table says. Ring and its pinion 60 mm wide instead of 48 to make up for it. Spring buffers for the bare stops, a screwed flange for the boom, larger bearings at the motor, current limit 11 A.',
      edits: [
        set('train.stages.ring.faceWidth', '60 mm'),
        set('train.stages.ring.shaft.span', '240 mm'),
        ...describe('output', { stopStiffness: 14, bufferTravel: 200, stopRadius: 300 }),
        ...describe('output.armHub', {
          kind: 'flange',
          screwCircle: 70,
          screw: 'M8',
          screwClass: '8.8',
          count: 8,
          screwTorque: 22,
          thickness: 14,
        }),
        set('train.motorShaft.drivingAt', '-12 mm'),
        set('train.motorShaft.bearingA.number', '6200'),
        set('train.motorShaft.bearingB.number', '6200'),
        set('drive.motorCurrentLimit', '11 A'),
      ],
    },
  ],
  ahead: null,
};

// The lifter of the tide flap in the boathouse drain: a spur stage and a worm, with a lever on the flap.
import type { Design } from '@/lib/design/document';
import { sluice } from '@/lib/design/starters/sluice';
import { type DemoDesign, describe, set } from './demo-design';

const base: Design = {
  ...sluice,
  duty: {
    ...sluice.duty,
    peakTorque: 14,
    holdTorque: 9,
    holdTime: 900,
    outputSpeed: 10,
    travel: 80,
    moveAngle: 70,
    moveTime: 14,
    restTime: 600,
    lifeCycles: 3000,
    loads: [
      { id: 'ebb', name: 'Against the ebb', share: 40, torque: 14, bending: 'oneWay' },
      { id: 'slack', name: 'At slack water', share: 60, torque: 8, bending: 'oneWay' },
    ],
    ambient: 10,
    armLength: 300,
    tipMass: 2.4,
  },
  drive: { ...sluice.drive, commutation: 'sensorlessFoc' },
  train: {
    ...sluice.train,
    stages: sluice.train.stages.map((stage) =>
      stage.kind === 'worm'
        ? { ...stage, wormWheel: { ...stage.wormWheel, material: 'pa_cf_fdm', build: 'flat' } }
        : stage,
    ),
  },
  output: { ...sluice.output, armMass: 0.6, stopTravel: 90 },
};

export const tideFlap: DemoDesign = {
  title: 'Tide-flap lifter',
  author: 'maud',
  base,
  testedFrom: 0,
  revisions: [
    {
      author: 'maud',
      changeNote: 'First issue: one spur stage, a steel worm, and a worm wheel printed in PA-CF to try it.',
      edits: [],
    },
    {
      author: 'maud',
      changeNote:
        'Worm wheel cut in brass: the printed one melts. Rotor sensor fitted. A supply that takes braking energy back. Stops at both ends, with springs.',
      edits: [
        set('train.stages.worm.wormWheel.material', 'brass_cuzn39pb3'),
        set('train.stages.worm.wormWheel.build', 'solid'),
        set('drive.commutation', 'sensoredFoc'),
        set('drive.motorCurrentLimit', '6 A'),
        set('supply.benchSinks', 'yes'),
        ...describe('output', { stops: 'both', stopRadius: 120, stopStiffness: 30, bufferTravel: 60 }),
      ],
    },
  ],
  ahead: null,
};

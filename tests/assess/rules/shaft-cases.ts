// For each rule on shafts: a change of the actuator with all shafts described that makes it fire, and the nearest quiet one.
import type { RuleCase } from '../power/rule-case';

const first = 'train.stages.k1.shaft';
const last = 'train.stages.k2.shaft';

export const shaftCases: readonly RuleCase[] = [
  {
    rule: 'shaft-not-assessed',
    title: 'a shaft without a diameter',
    fires: { [`${first}.diameter`]: null },
    quiet: { [`${first}.diameter`]: 8 },
    at: first,
    class: 'major',
  },
  {
    rule: 'shaft-not-assessed',
    title: 'both bearings at one place; 1 mm apart they are two',
    fires: { [`${first}.span`]: 0 },
    quiet: { [`${first}.span`]: 1 },
    at: first,
    class: 'major',
  },
  {
    rule: 'shaft-not-assessed',
    title: 'a motor shaft that is not described',
    fires: { 'train.motorShaft': { kind: 'unnamed' } },
    quiet: {},
    at: 'train.motorShaft',
    class: 'major',
  },
  {
    rule: 'shaft-not-assessed',
    title: 'two meshes on one shaft and no direction between them; along either axis will do',
    fires: { 'train.stages.k2.direction': null },
    quiet: { 'train.stages.k2.direction': 0 },
    at: first,
    class: 'major',
  },
  {
    rule: 'shaft-parts-collide',
    title: 'gears of 15 mm and 36 mm, 25.4 mm between their middles; 25.5 mm are just enough',
    fires: { [`${first}.span`]: 80, [`${first}.drivenAt`]: 20, [`${first}.drivingAt`]: 45.4 },
    quiet: { [`${first}.span`]: 80, [`${first}.drivenAt`]: 20, [`${first}.drivingAt`]: 45.5 },
    at: `${first}.drivingAt`,
    class: 'major',
  },
  {
    rule: 'shaft-parts-collide',
    title: 'a wheel of 36 mm with a bearing 17 mm from its middle; 18 mm are just enough',
    fires: { [`${last}.drivenAt`]: 17 },
    quiet: { [`${last}.drivenAt`]: 18 },
    at: `${last}.drivenAt`,
    class: 'major',
  },
  {
    rule: 'hangs-over',
    title: 'an arm 61 mm beyond a shaft of 60 mm between bearings; 60 mm is the limit',
    fires: { [`${last}.drivingAt`]: 121 },
    quiet: { [`${last}.drivingAt`]: 120 },
    at: `${last}.drivingAt`,
    class: 'minor',
  },
];

// The rules on bearings.
import { bearingLargerThanShaft } from './bearings/larger-than-shaft';
import { looseSeat } from './bearings/loose-seat';
import { smallSwing } from './bearings/small-swing';
import { thrustOnBush } from './bearings/thrust-on-bush';
import { bearingUndescribed } from './bearings/undescribed';
import type { Rule } from './rule';

export const bearingsRules: readonly Rule[] = [
  bearingUndescribed,
  bearingLargerThanShaft,
  thrustOnBush,
  looseSeat,
  smallSwing,
];

// The rules on hubs.
import { flatTooDeep } from './hubs/flat-too-deep';
import { gripsPlastic } from './hubs/grips-plastic';
import { knocks } from './hubs/knocks';
import { hubLargerThanShaft } from './hubs/larger-than-shaft';
import { noInterference } from './hubs/no-interference';
import { setScrewHardShaft } from './hubs/set-screw-hard-shaft';
import { setScrewInPlastic } from './hubs/set-screw-in-plastic';
import { hubUndescribed } from './hubs/undescribed';
import type { Rule } from './rule';

export const hubsRules: readonly Rule[] = [
  hubUndescribed,
  flatTooDeep,
  noInterference,
  hubLargerThanShaft,
  setScrewHardShaft,
  setScrewInPlastic,
  gripsPlastic,
  knocks,
];

// Every formula of the thermal shelf, for the registry, the laws suite and the handbook.
import type { AnyFormula } from '../formula';
import { continuousHold, continuousMoving } from './continuous';
import { holdRise, riseLeft, windingTemperature } from './hold';
import {
  caseCopperLoss,
  caseShare,
  copperGrowth,
  magnetRise,
  magnetTemperature,
  meanDragLoss,
} from './magnets';
import { mountShare, riseTo, toAmbient } from './mount';
import {
  adiabaticRate,
  continuousCurrent,
  insulationLife,
  riseAt,
  riseAtWarm,
  runawayShare,
  steadyRise,
  steadyRiseWarm,
  timeConstant,
  timeToRise,
  timeToRiseWarm,
} from './one-node';
import { caseRise, fastRate, slowRate, windingRise, windingRiseAt, windingRiseWarm } from './two-node';

export const thermalFormulas: readonly AnyFormula[] = [
  holdRise,
  riseLeft,
  windingTemperature,
  steadyRise,
  timeConstant,
  riseAt,
  timeToRise,
  runawayShare,
  steadyRiseWarm,
  riseAtWarm,
  timeToRiseWarm,
  continuousCurrent,
  adiabaticRate,
  insulationLife,
  windingRise,
  caseRise,
  windingRiseWarm,
  slowRate,
  fastRate,
  windingRiseAt,
  toAmbient,
  mountShare,
  riseTo,
  copperGrowth,
  caseShare,
  meanDragLoss,
  caseCopperLoss,
  magnetRise,
  magnetTemperature,
  continuousHold,
  continuousMoving,
];

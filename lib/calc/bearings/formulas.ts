// Every formula of the bearings shelf, for the registry, the laws suite and the handbook.
import type { AnyFormula } from '../formula';
import * as bush from './bush';
import { meanOfTwoLoads, oscillationSpeed, shareSum } from './duty';
import * as life from './life';
import * as load from './load';
import * as seat from './seat';
import * as swing from './swing';

export const bearingsFormulas: readonly AnyFormula[] = [
  load.shockedLoad,
  load.thrustRatio,
  load.thrustFactor,
  load.equivalentLoad,
  load.staticLoad,
  load.staticFactor,
  load.greatestThrust,
  load.loadAtTorque,
  shareSum,
  meanOfTwoLoads,
  oscillationSpeed,
  life.lifeTurns,
  life.moveSpeed,
  life.ratingLife,
  life.lifeTime,
  life.loadForLife,
  life.ratedLoad,
  life.requiredRating,
  life.reliabilityFactor,
  life.reliableLife,
  life.weibullRating,
  life.weibullReliability,
  swing.ballCount,
  swing.ballRatio,
  swing.leastSwing,
  swing.halfSwing,
  seat.seatPressure,
  seat.seatGap,
  bush.bushPressure,
  bush.bushSpeed,
  bush.meanBushSpeed,
  bush.pressureSpeed,
  bush.bushLoad,
];

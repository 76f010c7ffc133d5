// Every formula of the bearings shelf, for the registry, the laws suite and the handbook.
import type { AnyFormula } from '../formula';
import { meanOfTwoLoads, oscillationSpeed } from './duty';
import {
  lifeTime,
  ratingLife,
  reliabilityFactor,
  reliableLife,
  requiredRating,
  weibullRating,
  weibullReliability,
} from './life';
import { equivalentLoad, greatestThrust, staticFactor, staticLoad, thrustRatio } from './load';

export const bearingsFormulas: readonly AnyFormula[] = [
  thrustRatio,
  equivalentLoad,
  staticLoad,
  staticFactor,
  greatestThrust,
  meanOfTwoLoads,
  oscillationSpeed,
  ratingLife,
  lifeTime,
  requiredRating,
  reliabilityFactor,
  reliableLife,
  weibullRating,
  weibullReliability,
];

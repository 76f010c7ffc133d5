// Every formula of the sensor shelf, for the registry, the laws suite and the handbook.
import type { AnyFormula } from '../formula';
import { budgetFormulas } from './budget';
import {
  atOutput,
  linearityError,
  loadingError,
  positionError,
  randomError,
  travelLeft,
  travelUse,
} from './error';
import { likelyError, worstError } from './exactness';
import {
  averagedNoise,
  averagingBits,
  commandAge,
  pulseShare,
  pulseStep,
  quadratureCounts,
  quantisationNoise,
  quantisationRatio,
  resolution,
  speedStep,
  usableSteps,
} from './resolution';
import { sensorAngle } from './travel';
import { turnFormulas } from './turns';

export const sensorFormulas: readonly AnyFormula[] = [
  linearityError,
  loadingError,
  atOutput,
  travelUse,
  travelLeft,
  randomError,
  positionError,
  worstError,
  likelyError,
  resolution,
  quantisationNoise,
  quantisationRatio,
  usableSteps,
  averagedNoise,
  averagingBits,
  quadratureCounts,
  speedStep,
  pulseShare,
  pulseStep,
  commandAge,
  sensorAngle,
  ...budgetFormulas,
  ...turnFormulas,
];

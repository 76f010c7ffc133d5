// Every formula of the hazard shelf, for the registry, the laws suite and the handbook.
import type { AnyFormula } from '../formula';
import { bufferFormulas } from './buffer';
import {
  approachDistance,
  contactForce,
  contactSpeed,
  fullForceArea,
  reducedMass,
  springEnergy,
  touchForceLimit,
} from './contact';
import {
  effectiveMass,
  fallEnergy,
  kineticEnergy,
  ringStress,
  speedOfEnergy,
  stoppingAngle,
  stoppingTime,
  stopTorque,
  tipSpeed,
} from './energy';
import { keepOut, loweringEnergy, thrownRange, thrownReach } from './reach';
import { strikeFormulas } from './strike';

export const hazardFormulas: readonly AnyFormula[] = [
  reducedMass,
  contactForce,
  contactSpeed,
  springEnergy,
  touchForceLimit,
  fullForceArea,
  approachDistance,
  kineticEnergy,
  tipSpeed,
  effectiveMass,
  fallEnergy,
  speedOfEnergy,
  stoppingTime,
  stoppingAngle,
  stopTorque,
  ringStress,
  thrownRange,
  thrownReach,
  keepOut,
  loweringEnergy,
  ...strikeFormulas,
  ...bufferFormulas,
];

// Every formula of the statics shelf, for the registry, the laws suite and the handbook.
import type { AnyFormula } from '../formula';
import { armTorque, coupleForce, gravityTorque, reactionTorque, tipForce } from './arm';
import {
  clampArmForce,
  clampForceAgainstTipping,
  clampForceAgainstTurning,
  clampTorque,
  criticalHeight,
  pushNormalForce,
  pushNormalOffset,
  rigTippingTorque,
  rigTorque,
  screwClampForce,
  slidingForce,
  sweepMargin,
  tippingForce,
  tippingTorque,
} from './clamp';

export const staticsFormulas: readonly AnyFormula[] = [
  gravityTorque,
  armTorque,
  reactionTorque,
  coupleForce,
  tipForce,
  tippingForce,
  tippingTorque,
  slidingForce,
  criticalHeight,
  pushNormalForce,
  pushNormalOffset,
  clampTorque,
  clampArmForce,
  screwClampForce,
  rigTippingTorque,
  clampForceAgainstTipping,
  clampForceAgainstTurning,
  rigTorque,
  sweepMargin,
];

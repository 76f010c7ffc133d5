// Every formula of the motion shelf, for the registry, the laws suite and the handbook.
import type { AnyFormula } from '../formula';
import { armMiddle, armOffsetInertia, outputInertia } from './arm';
import { moveDemand } from './demand';
import { dutyTorque, fastestMove, fastestMoveSpeed, moveTorque, movingShare } from './duty';
import {
  accelerationTorque,
  armInertia,
  bestRatio,
  motorSpeed,
  motorTorque,
  outputAcceleration,
  outputTorque,
  pointInertia,
  reflectedInertia,
  totalInertia,
} from './inertia';
import { limitFormulas } from './limits';
import {
  cosineAcceleration,
  cosineEffectiveAcceleration,
  cosineLeastTime,
  cosineSpeed,
  trapezoidAcceleration,
  trapezoidEffectiveAcceleration,
  trapezoidLeastTime,
  trapezoidSpeed,
  triangleAcceleration,
  triangleEffectiveAcceleration,
  triangleLeastTime,
  triangleSpeed,
} from './profiles';

export const motionFormulas: readonly AnyFormula[] = [
  armMiddle,
  armOffsetInertia,
  outputInertia,
  moveTorque,
  dutyTorque,
  movingShare,
  fastestMove,
  fastestMoveSpeed,
  reflectedInertia,
  totalInertia,
  pointInertia,
  armInertia,
  outputAcceleration,
  accelerationTorque,
  bestRatio,
  outputTorque,
  motorTorque,
  motorSpeed,
  trapezoidSpeed,
  trapezoidAcceleration,
  trapezoidEffectiveAcceleration,
  trapezoidLeastTime,
  triangleSpeed,
  triangleAcceleration,
  triangleEffectiveAcceleration,
  triangleLeastTime,
  cosineSpeed,
  cosineAcceleration,
  cosineEffectiveAcceleration,
  cosineLeastTime,
  moveDemand,
  ...limitFormulas,
];

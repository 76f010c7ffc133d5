// The motor at work: its points, its temperatures over the duty, its speeds, what it stands without end, and its curves.
import type { TrainWork, Work } from '../../work';
import { motorCurves } from '../curves/motor-map';
import { rated } from '../drive/rated';
import type { MoveWork } from '../output/motion';
import type { Source } from '../supply/source';
import { continuous } from './continuous';
import type { MotorWork } from './currents';
import { cycleOf } from './cycle';
import { phasesOf } from './phases';
import { addPoints, pointsOf } from './points';
import { speeds } from './speed';
import { warmth } from './warmth';

export function motorAtWork(
  work: Work,
  train: TrainWork,
  motor: MotorWork,
  move: MoveWork,
  source: Source,
): void {
  const phases = phasesOf(work, train, move);
  const points = pointsOf(work, train, motor, phases);
  addPoints(work, motor, points);
  warmth(work, train, motor, cycleOf(work, motor, phases));
  speeds(work, train, motor, source);
  rated(work, motor);
  motorCurves(work, train, motor, source, continuous(work, train, motor), points);
}

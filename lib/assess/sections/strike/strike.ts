// The blow at a hard stop, and what it breaks.
import type { DriveWork, TrainWork, Work } from '../../work';
import type { StiffnessWork } from '../stiffness/stiffness';

export function strikeSection(
  _work: Work,
  _train: TrainWork,
  _drive: DriveWork,
  _stiffness: StiffnessWork,
): void {}

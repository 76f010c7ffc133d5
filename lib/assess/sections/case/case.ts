// The case and the screws that hold it and the motor.
import type { DriveWork, TrainWork, Work } from '../../work';

export function caseSection(_work: Work, _train: TrainWork, _drive: DriveWork): void {}

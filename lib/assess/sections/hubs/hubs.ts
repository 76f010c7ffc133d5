// Every hub: the torque at which it slips or its material gives way.
import type { TrainWork, Work } from '../../work';

export function hubsSection(_work: Work, _train: TrainWork): void {}

// Every bearing: life, static factor, speed and seat.
import type { ShaftReactions, TrainWork, Work } from '../../work';
import type { DutyWork } from '../duty';

export function bearingsSection(
  _work: Work,
  _duty: DutyWork,
  _train: TrainWork,
  _reactions: readonly ShaftReactions[],
): void {}

// Every shaft of the train: what its bearings carry, what it bears itself, how far it bends.
import type { ShaftReactions, TrainWork, Work } from '../../work';

export function shaftsSection(_work: Work, _train: TrainWork): readonly ShaftReactions[] {
  return [];
}

// Play and give of the whole train at its output, and the resonance that follows.
import type { Traced } from '@/lib/quantity/traced';
import type { TrainWork, Work } from '../../work';

/** What the strike needs of the train. */
export interface StiffnessWork {
  /** Torsional stiffness from the rotor to the load at the output, N m/rad, or why it is not known. */
  readonly atOutput: Traced | string;
}

export function stiffnessSection(_work: Work, _train: TrainWork): StiffnessWork {
  return { atOutput: 'The stiffness of the train is not worked.' };
}

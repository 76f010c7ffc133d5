// What every kind of stage hands to the train: the one contract between a stage and what stands around it.
import type { Traced } from '@/lib/quantity/traced';
import type { StageLoads, Work } from '../../work';
import type { DutyWork } from '../duty';
import type { Shaft } from './service/loads';

/** A stage worked from the output side: what it passes on towards the motor, and what is still to be judged. */
export interface StageWork {
  readonly at: string;
  readonly place: string;
  readonly ratio: Traced;
  /** With bearings; the sentence says why it is not known. */
  readonly efficiency: Traced | string;
  /** Power that its teeth turn into heat at the peak, W; the sentence says why it is not known. */
  readonly heat: Traced | string;
  /** The shaft before it, with what it must carry. */
  readonly before: Shaft;
  readonly loads: StageLoads;
  /** Adds the figures and checks of the stage, in the surroundings that the heat of all stages makes. */
  judge(surroundings: Traced | string): void;
}

/** Where a stage of any kind stands, and the shaft behind it with what it must carry. */
export interface StageCall<S> {
  readonly work: Work;
  readonly at: string;
  readonly place: string;
  readonly stage: S;
  readonly behind: Shaft;
  readonly duty: DutyWork;
}

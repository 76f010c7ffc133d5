// The kinds of stages: each is worked by the file of its kind.
import type { StageLoads } from '../../work';
import { workBelt } from './belt/stage';
import { workInternal } from './internal/stage';
import { workPair } from './pair/work';
import { workPlanetary } from './planetary/stage';
import type { StageCall, StageWork } from './stage-work';
import { workWorm } from './worm/stage';

type AnyStage = StageLoads['stage'];

/** Works one stage by its kind. */
export function workStage(call: StageCall<AnyStage>): StageWork {
  const { stage } = call;
  switch (stage.kind) {
    case 'spur':
    case 'helical':
    case 'doubleHelical':
      return workPair({ ...call, stage });
    case 'internal':
      return workInternal({ ...call, stage });
    case 'planetary':
      return workPlanetary({ ...call, stage });
    case 'belt':
      return workBelt({ ...call, stage });
    case 'worm':
      return workWorm({ ...call, stage });
  }
}

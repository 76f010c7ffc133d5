// placeholder while the kind is being written
import type { StageCall, StageWork } from '../kinds';

export function workPlanetary(_call: StageCall<{ readonly kind: 'planetary' }>): StageWork {
  throw new Error('not written yet');
}

// placeholder while the kind is being written
import type { StageCall, StageWork } from '../kinds';

export function workBelt(_call: StageCall<{ readonly kind: 'belt' }>): StageWork {
  throw new Error('not written yet');
}

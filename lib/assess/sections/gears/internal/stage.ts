// placeholder while the kind is being written
import type { StageCall, StageWork } from '../kinds';

export function workInternal(_call: StageCall<{ readonly kind: 'internal' }>): StageWork {
  throw new Error('not written yet');
}

// placeholder while the kind is being written
import type { StageCall, StageWork } from '../kinds';

export function workWorm(_call: StageCall<{ readonly kind: 'worm' }>): StageWork {
  throw new Error('not written yet');
}

// The usual move against what motor, drive and supply can do: its phases, its least time, the ratio that would be fastest.
import type { Work } from '../../work';
import { leastTimes } from './least-time';
import { loadOf, type MoveContext, movedOf } from './moved';
import { phases } from './phases';
import { ratio } from './ratio';

export function moves(work: Work, context: MoveContext): void {
  const load = loadOf(work, context.train, context.move);
  const moved = movedOf(work, context, load);
  phases(work, context, load, moved);
  leastTimes(work, moved);
  ratio(work, context, load, moved);
}

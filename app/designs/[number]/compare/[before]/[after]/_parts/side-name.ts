// What a side of a comparison is called.
import type { SideView } from '@/lib/service/views/compare';

export function sideName(side: Pick<SideView, 'letter'>): string {
  return side.letter === 'draft' ? 'the draft' : `revision ${side.letter}`;
}

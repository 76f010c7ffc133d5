// Threads as balloons on the sheet, and the place of the page that each speaks of.
import type { SheetView } from '@/lib/service/views/sheet';
import type { ThreadView } from '@/lib/service/views/thread';
import type { RemarkPin } from '@/lib/ui/checks/remark-pin';

export function pinsOf(sheet: SheetView): RemarkPin[] {
  return sheet.threads.map((t) => ({
    number: t.number,
    state: t.state,
    at: t.anchor.path,
    href: `#thread-${t.number}`,
  }));
}

/** Address on the sheet of what a thread speaks of; undefined for the revision as a whole. */
export function placeOf({ anchor }: ThreadView): string | undefined {
  return anchor.kind === 'revision' ? undefined : `#${anchor.kind}-${anchor.path}`;
}

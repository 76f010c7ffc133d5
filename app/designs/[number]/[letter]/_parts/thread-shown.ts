// A thread as the component shows it.
import type { RemarkView, ThreadView } from '@/lib/service/views/thread';
import { placeOf } from './pins';

export function threadShown(t: ThreadView) {
  const spoken = t.remarks.filter((r) => r.text !== '');
  return {
    number: t.number,
    state: t.state,
    where: t.anchor.label,
    whereHref: placeOf(t),
    revision: t.raisedOn,
    remarks: spoken.map((r) => ({ id: r.remarkId, author: r.by.name, at: r.at, body: r.text })),
    resolution: resolutionOf(t.remarks.at(-1)),
  };
}

function resolutionOf(last: RemarkView | undefined): string | null {
  return last?.act === 'resolved' ? `Resolved by ${last.by.name}` : null;
}

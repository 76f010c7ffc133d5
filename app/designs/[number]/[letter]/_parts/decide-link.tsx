// The way to decide about a finding or a check that falls short.
import { addresses } from '@/app/_parts/addresses';
import type { SheetView } from '@/lib/service/views/sheet';

interface DecideLinkProps {
  readonly sheet: Pick<SheetView, 'design' | 'revision'>;
  /** Key of what is decided about. */
  readonly about: string;
  /** The same in words, for those who hear the page. */
  readonly words: string;
}

export function DecideLink({ sheet, about, words }: DecideLinkProps) {
  return (
    <a href={addresses.decide(sheet.design.number, sheet.revision.letter, about)}>
      Decide<span className="for-ear"> about: {words}</span>
    </a>
  );
}

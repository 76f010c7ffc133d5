// Any other word in a ruled box: a state, a class of finding, a decision.
import type { ReactNode } from 'react';

export type MarkKind = 'plain' | 'below' | 'holds' | 'not-assessed' | 'struck';

/** A short word in a ruled box. `kind` is `below` for what warns, `struck` for what no longer counts. */
export function WordMark({
  kind = 'plain',
  children,
}: {
  readonly kind?: MarkKind;
  readonly children: ReactNode;
}) {
  return (
    <span className="mark" data-mark={kind}>
      {children}
    </span>
  );
}

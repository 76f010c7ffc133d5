// Nothing here yet: one sentence that says what would be here, and the way to make it.
import type { ReactNode } from 'react';

/** `children` is a sentence, with a link or button after it where there is something to do. */
export function EmptyState({ children }: { readonly children: ReactNode }) {
  return <div className="empty-state">{children}</div>;
}

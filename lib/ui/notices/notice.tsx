// What happened after an action, or what failed, in a sentence; announced without moving the focus.
import type { ReactNode } from 'react';

/** Something was done. */
export function Notice({ children }: { readonly children: ReactNode }) {
  return (
    <div className="notice" role="status">
      {children}
    </div>
  );
}

interface FailureProps {
  /** What could not be done, e.g. `Not signed.` */
  readonly title: string;
  /** Why, and what to do. */
  readonly children: ReactNode;
}

/** Something could not be done. */
export function Failure({ title, children }: FailureProps) {
  return (
    <div className="notice" data-kind="failure" role="alert">
      <strong>{title}</strong> {children}
    </div>
  );
}

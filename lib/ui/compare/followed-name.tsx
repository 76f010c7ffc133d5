// The name of a check or figure that moved: the way to its row on the sheet, and with script to how both sides came about.
import type { ReactNode } from 'react';

interface FollowedNameProps {
  /** `check-<key>` or `figure-<key>`. */
  readonly of: string;
  readonly sheetHref?: string | undefined;
  readonly children: ReactNode;
}

export function FollowedName({ of, sheetHref, children }: FollowedNameProps) {
  if (sheetHref === undefined) return children;
  return (
    <a href={`${sheetHref}#${of}`} data-follow={of}>
      {children}
    </a>
  );
}

// A revision cloud around a new value.
import type { ReactNode } from 'react';

/** Draws a cloud around its content. */
export function Cloud({ children }: { readonly children: ReactNode }) {
  return <span className="cloud">{children}</span>;
}

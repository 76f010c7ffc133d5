// A block of the margin column with a small heading.
import type { ReactNode } from 'react';

interface MarginBlockProps {
  readonly title: string;
  readonly id?: string | undefined;
  readonly children: ReactNode;
}

/** A block of the margin column; its title is an h2 set as a label. */
export function MarginBlock({ title, id, children }: MarginBlockProps) {
  return (
    <section className="margin-block" id={id}>
      <h2 className="label">{title}</h2>
      {children}
    </section>
  );
}

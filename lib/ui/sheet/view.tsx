// A view of the sheet: a letter in the accent, a label in condensed capitals, a rule to the edge.
import type { ReactNode } from 'react';

interface ViewProps {
  /** A, B, C … as on a drawing. */
  readonly letter: string;
  readonly title: string;
  /** Address within the page, e.g. `teeth`. */
  readonly id?: string | undefined;
  /** A word or link at the end of the rule. */
  readonly aside?: ReactNode;
  readonly children: ReactNode;
}

/** One lettered section with its heading (h2). */
export function View({ letter, title, id, aside, children }: ViewProps) {
  const anchor = id ?? `view-${letter.toLowerCase()}`;
  return (
    <section className="view" id={anchor} aria-labelledby={`${anchor}-title`}>
      <div className="view-head">
        <span className="view-letter" aria-hidden="true">
          {letter}
        </span>
        <h2 id={`${anchor}-title`}>{title}</h2>
        {aside === undefined ? null : <span className="view-aside">{aside}</span>}
      </div>
      {children}
    </section>
  );
}

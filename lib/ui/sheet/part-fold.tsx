// A fold whose content may be left off the page: it is then fetched when the fold is opened (app/_parts/following), and
// without script a link leads to the sheet in full, on which nothing is left off.
import type { ReactNode } from 'react';

interface PartFoldProps {
  /** Name of the fold within the page, by which its content is fetched. */
  readonly id: string;
  readonly summary: ReactNode;
  /** What it holds, for the line that stands in its place: `12 figures of the teeth`. */
  readonly what: string;
  /** Address of the sheet in full; undefined: the content stands in the page. */
  readonly inFull?: string | undefined;
  /** Whether content that stands in the page stands open. */
  readonly open?: boolean | undefined;
  readonly className?: string | undefined;
  readonly children: ReactNode;
}

export function PartFold({ id, summary, what, inFull, open = false, className, children }: PartFoldProps) {
  if (inFull === undefined) {
    return (
      <details id={id} className={className} open={open}>
        <summary>{summary}</summary>
        {children}
      </details>
    );
  }
  return (
    <details id={id} className={className} data-away="">
      <summary>{summary}</summary>
      <p className="hush">
        Not opened on this page: {what}. <a href={`${inFull}#${id}`}>On the sheet in full</a>
      </p>
    </details>
  );
}

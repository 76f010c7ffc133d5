// A fold of a form: one ruled line with its name and what is entered in it, that opens.
import type { ReactNode } from 'react';

interface FoldProps {
  readonly label: string;
  /** What is entered in it, in one line. */
  readonly words: string;
  /** How many of its texts do not fit yet. */
  readonly waiting?: number | undefined;
  readonly open?: boolean | undefined;
  /** Whether its name is a heading of the sheet (h3). */
  readonly heading?: boolean | undefined;
  readonly children: ReactNode;
}

export function Fold({ label, words, waiting = 0, open = false, heading = false, children }: FoldProps) {
  return (
    <details className="fold" open={open}>
      <summary>
        {heading ? <h3>{label}</h3> : <span className="fold-name">{label}</span>}
        <span className="fold-words">
          {words}
          {waiting === 0 ? null : <b className="warn"> {waiting} to put right</b>}
        </span>
      </summary>
      <div className="fold-body">{children}</div>
    </details>
  );
}

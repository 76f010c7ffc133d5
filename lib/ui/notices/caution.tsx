// A caution: the warning triangle in ink, the signal word, and what to do. Grades after ANSI Z535 and ISO 3864 usage:
// danger will, warning could, caution might hurt.
import type { ReactNode } from 'react';
import { WarningTriangle } from '../marks/warning-triangle';

interface CautionProps {
  readonly grade?: 'danger' | 'warning' | 'caution' | undefined;
  /** A heading after the signal word. */
  readonly title?: string | undefined;
  readonly children: ReactNode;
}

/** A ruled block with triangle and signal word. */
export function Caution({ grade = 'caution', title, children }: CautionProps) {
  return (
    <section className="caution" data-grade={grade} aria-label={title ?? grade}>
      <WarningTriangle />
      <div>
        <p>
          <span className="caution-word">{grade}</span>
          {title === undefined ? null : <strong> {title}</strong>}
        </p>
        <div className="caution-body">{children}</div>
      </div>
    </section>
  );
}

// The title block of pages that show no single drawing: a few ruled cells, the first with the page's title.
import type { ReactNode } from 'react';

interface PlainTitleProps {
  /** Small label over the title, e.g. the club. */
  readonly over: string;
  readonly title: string;
  readonly cells?: readonly { readonly label: string; readonly content: ReactNode }[] | undefined;
}

/** A title block with free cells; its title is the page's h1. */
export function PlainTitle({ over, title, cells = [] }: PlainTitleProps) {
  return (
    <header className="title-block">
      <dl className="plain-cells">
        <div className="title-cell">
          <dt className="label">{over}</dt>
          <dd>
            <h1>{title}</h1>
          </dd>
        </div>
        {cells.map((cell) => (
          <div className="title-cell" key={cell.label}>
            <dt className="label">{cell.label}</dt>
            <dd>{cell.content}</dd>
          </div>
        ))}
      </dl>
    </header>
  );
}

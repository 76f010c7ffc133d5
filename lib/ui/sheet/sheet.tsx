// The drawing sheet that every page sits on: zone marks, frame, title block, views and the margin column.
import type { ReactNode } from 'react';
import { Zones } from './zones';

interface SheetProps {
  /** A TitleBlock, or a PlainTitle on pages without a drawing. */
  readonly title: ReactNode;
  /** The views. */
  readonly children: ReactNode;
  /** Findings, remarks, actions: right of the views on wide screens, below them on narrow ones. */
  readonly margin?: ReactNode;
  /** Words of the margin for the ear, e.g. `Findings and remarks`. */
  readonly marginLabel?: string | undefined;
  /** A last ruled line inside the frame. */
  readonly foot?: ReactNode;
}

/** One sheet. It holds the page's `main`, with the id that the skip link of the root layout leads to. */
export function Sheet({ title, children, margin, marginLabel = 'Margin', foot }: SheetProps) {
  const hasMargin = margin !== undefined && margin !== null;
  return (
    <div className="sheet">
      <Zones />
      <main id="content" className="sheet-frame">
        {title}
        <div className="sheet-body" data-margin={hasMargin ? true : undefined}>
          <div className="sheet-views">{children}</div>
          {hasMargin ? (
            <aside className="sheet-margin" aria-label={marginLabel}>
              {margin}
            </aside>
          ) : null}
        </div>
        {foot === undefined ? null : <div className="sheet-foot hush">{foot}</div>}
      </main>
    </div>
  );
}

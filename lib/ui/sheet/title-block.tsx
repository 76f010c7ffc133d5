// The title block (after ISO 7200): ruled cells that say what this is, which revision, how it stands, who drew it.
import type { ReactNode } from 'react';

export interface TitleBlockProps {
  readonly club: string;
  readonly title: string;
  /** Drawing number, e.g. `QS-014`. */
  readonly drawing: string;
  /** Revision letter; null for a working draft, which carries no letter and says so. */
  readonly revision: string | null;
  /** Standing in words, e.g. `Under review`, and what it means in a few more. */
  readonly standing: string;
  readonly standingNote?: ReactNode;
  /** `2026-11-21`, with the hour beneath; null for what is not issued. */
  readonly issued: { readonly day: string; readonly hour: string } | null;
  readonly drawnBy: string;
  /** Hash of the document, whole: its head and tail are shown; null while it may still change. */
  readonly hash: string | null;
  readonly method: string;
  /** A further row across the block, e.g. the change note. */
  readonly extra?: { readonly label: string; readonly content: ReactNode } | undefined;
}

/** The title block of a design page; its title is the page's h1. */
export function TitleBlock(p: TitleBlockProps) {
  return (
    <header className="title-block">
      <dl className="title-cells">
        <Cell name="title" label={p.club}>
          <dd>
            <h1>{p.title}</h1>
          </dd>
        </Cell>
        <Cell name="drawing" label="Drawing">
          <dd className="number">{p.drawing}</dd>
        </Cell>
        <Cell name="revision" label="Revision">
          <dd className={p.revision === null ? undefined : 'title-revision'}>{p.revision ?? 'Draft'}</dd>
          {p.revision === null ? <dd>no letter yet</dd> : null}
        </Cell>
        <Cell name="standing" label="Standing">
          <dd>{p.standing}</dd>
          {p.standingNote === undefined ? null : <dd>{p.standingNote}</dd>}
        </Cell>
        <Cell name="issued" label="Issued">
          <dd className="number">{p.issued?.day ?? 'Not issued'}</dd>
          {p.issued === null ? null : <dd className="number">{p.issued.hour}</dd>}
        </Cell>
        <Cell name="drawn" label="Drawn by">
          <dd>{p.drawnBy}</dd>
        </Cell>
        <Cell name="record" label="Record">
          <dd className="number">{p.hash === null ? 'Not fixed' : <HashHead hash={p.hash} />}</dd>
          <dd>method {p.method}</dd>
        </Cell>
        {p.extra === undefined ? null : (
          <Cell name="extra" label={p.extra.label}>
            <dd>{p.extra.content}</dd>
          </Cell>
        )}
      </dl>
    </header>
  );
}

/** The head and tail of a hash, the whole of it on the element for those who want to copy it. */
export function HashHead({ hash }: { readonly hash: string }) {
  return (
    <span className="number" title={hash}>
      {hash.slice(0, 4)} {hash.slice(4, 8)} … {hash.slice(-4)}
    </span>
  );
}

interface CellProps {
  readonly name: string;
  readonly label: string;
  readonly children: ReactNode;
}

function Cell({ name, label, children }: CellProps) {
  return (
    <div className="title-cell" data-cell={name}>
      <dt className="label">{label}</dt>
      {children}
    </div>
  );
}

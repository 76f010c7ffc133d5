// A thread of remarks in full: balloon, what it speaks of, the remarks in order, and the forms given as children.
import type { ReactNode } from 'react';
import { Balloon } from '../marks/balloon';
import { Moment } from '../marks/time';
import { Markdown } from './markdown';
import type { RemarkView, ThreadView } from './thread-view';

interface ThreadProps {
  readonly thread: ThreadView;
  /** Forms to reply, resolve or reopen. */
  readonly children?: ReactNode;
}

/** One thread; its address is `#thread-<number>`. */
export function Thread({ thread, children }: ThreadProps) {
  const { number, state, where, whereHref, remarks } = thread;
  return (
    <article
      className="thread"
      id={`thread-${number}`}
      data-state={state}
      tabIndex={-1}
      aria-labelledby={`thread-${number}-title`}
    >
      <header className="thread-head">
        <Balloon number={number} state={state} />
        <h3 id={`thread-${number}-title`}>
          {whereHref === undefined ? where : <a href={whereHref}>{where}</a>}
        </h3>
        <span className="hush">
          {state === 'open' ? 'open' : 'resolved'} · from revision {thread.revision}
        </span>
      </header>
      <ol className="remarks">
        {remarks.map((r) => (
          <Remark key={r.id} remark={r} />
        ))}
      </ol>
      {thread.resolution === null ? null : <p className="thread-resolution">{thread.resolution}</p>}
      {children === undefined ? null : <div className="thread-forms">{children}</div>}
    </article>
  );
}

function Remark({ remark }: { readonly remark: RemarkView }) {
  return (
    <li className="remark" id={`remark-${remark.id}`}>
      <p className="hush">
        <b>{remark.author}</b>, <Moment at={remark.at} />
      </p>
      <Markdown text={remark.body} />
      {remark.redline === undefined ? null : (
        <div className="redline">
          <span className="label">Redline</span>
          {remark.redline}
        </div>
      )}
    </li>
  );
}

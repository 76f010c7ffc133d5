// The threads of a revision in full, with their forms.
import { TextForm } from '@/app/_parts/text-form';
import type { SheetView } from '@/lib/service/views/sheet';
import type { RemarkView, ThreadView } from '@/lib/service/views/thread';
import { Moment } from '@/lib/ui/marks/time';
import { Thread } from '@/lib/ui/threads/thread';
import { answer, settle } from '../actions';
import { placeOf } from './pins';

export function Threads({ sheet }: { readonly sheet: SheetView }) {
  if (sheet.threads.length === 0) return <p className="hush">No remark yet.</p>;
  const open = sheet.threads.filter((t) => t.state === 'open').length;
  return (
    <>
      {/* Told anew when a thread is resolved or reopened. */}
      <p className="hush" role="status">
        {open === 0 ? 'No thread open' : open === 1 ? '1 thread open' : `${open} threads open`},{' '}
        {sheet.threads.length - open} resolved
      </p>
      {sheet.threads.map((t) => (
        <Thread key={t.threadId} thread={viewOf(t)}>
          <Forms thread={t} sheet={sheet} />
        </Thread>
      ))}
    </>
  );
}

function viewOf(t: ThreadView) {
  const spoken = t.remarks.filter((r) => r.text !== '');
  return {
    number: t.number,
    state: t.state,
    where: t.anchor.label,
    whereHref: placeOf(t),
    revision: t.raisedOn,
    remarks: spoken.map((r) => ({ id: r.remarkId, author: r.by.name, at: r.at, body: r.text })),
    resolution: resolutionOf(t.remarks.at(-1)),
  };
}

function resolutionOf(last: RemarkView | undefined): string | null {
  return last?.act === 'resolved' ? `Resolved by ${last.by.name}` : null;
}

function Forms({ thread, sheet }: { readonly thread: ThreadView; readonly sheet: SheetView }) {
  const hidden = { threadId: thread.threadId, design: sheet.design.number, letter: sheet.revision.letter };
  const last = thread.remarks.at(-1);
  const then = `thread-${thread.number}`;
  return (
    <>
      {last?.act === 'reopened' ? (
        <p className="hush">
          Reopened by {last.by.name}, <Moment at={last.at} />
        </p>
      ) : null}
      {thread.mayReply ? (
        <details>
          <summary>Reply in thread {thread.number}</summary>
          <TextForm
            action={answer}
            hidden={hidden}
            failed="Not sent."
            submit="Reply"
            inputs={[{ kind: 'block', name: 'text', label: 'Reply', rows: 3, max: 4000 }]}
          />
        </details>
      ) : null}
      {thread.mayResolve ? (
        <TextForm
          action={settle}
          hidden={{ ...hidden, to: 'resolved' }}
          failed="Not resolved."
          then={then}
          submit={`Resolve thread ${thread.number}`}
          kind="quiet"
          inputs={[]}
        />
      ) : null}
      {thread.mayReopen ? (
        <details>
          <summary>Reopen thread {thread.number}</summary>
          <TextForm
            action={settle}
            hidden={{ ...hidden, to: 'open' }}
            failed="Not reopened."
            then={then}
            submit="Reopen"
            inputs={[{ kind: 'block', name: 'text', label: 'Why', rows: 2, max: 4000 }]}
          />
        </details>
      ) : null}
    </>
  );
}

// The threads of a revision in full, with their forms.
import { addresses } from '@/app/_parts/addresses';
import { TextForm } from '@/app/_parts/text-form';
import type { SheetView } from '@/lib/service/views/sheet';
import type { ThreadView } from '@/lib/service/views/thread';
import { Moment } from '@/lib/ui/marks/time';
import { Thread } from '@/lib/ui/threads/thread';
import { answer, settle } from '../actions';
import { threadShown } from './thread-shown';

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
        <Thread key={t.threadId} thread={threadShown(t)}>
          <Forms thread={t} sheet={sheet} />
        </Thread>
      ))}
    </>
  );
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
        <a href={addresses.reopen(hidden.design, hidden.letter, thread.number)}>
          Reopen thread {thread.number}
        </a>
      ) : null}
    </>
  );
}

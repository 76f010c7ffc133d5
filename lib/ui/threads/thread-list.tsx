// Threads in short, for the margin column: balloon, the first words, who and when.
import { Balloon } from '../marks/balloon';
import { printDay } from '../marks/time';
import type { ThreadView } from './thread-view';

interface ThreadListProps {
  readonly threads: readonly ThreadView[];
  /** Page that shows the threads in full; each item leads to `<href>#thread-<number>`. */
  readonly href: string;
  readonly none?: string | undefined;
}

/** Open threads first, then the resolved ones, struck. */
export function ThreadList({ threads, href, none = 'No remark yet.' }: ThreadListProps) {
  if (threads.length === 0) return <p className="hush">{none}</p>;
  const sorted = threads.toSorted(
    (a, b) => Number(a.state === 'resolved') - Number(b.state === 'resolved') || a.number - b.number,
  );
  return (
    <ul className="thread-list">
      {sorted.map((t) => (
        <li key={t.number} data-state={t.state}>
          <Balloon number={t.number} state={t.state} href={`${href}#thread-${t.number}`} />
          <div>
            <p className="thread-first">{opening(t.remarks[0]?.body ?? '')}</p>
            <p className="hush">
              {t.where} · <span className="number">{whoWhen(t)}</span>
              {rest(t)}
            </p>
          </div>
        </li>
      ))}
    </ul>
  );
}

function whoWhen(t: ThreadView): string {
  const first = t.remarks[0];
  return first === undefined ? '' : `${first.author}, ${printDay(first.at)}`;
}

function rest(t: ThreadView): string {
  const replies = t.remarks.length - 1;
  const more = replies <= 0 ? '' : replies === 1 ? ' · 1 reply' : ` · ${replies} replies`;
  return t.state === 'resolved' ? `${more} · resolved` : more;
}

/** The first line of a remark without its Markdown signs, cut at a word. */
function opening(body: string): string {
  const line = body.split('\n').find((l) => l.trim() !== '') ?? '';
  const plain = line
    .replace(/\[([^\]]*)\]\([^)]*\)/g, '$1')
    .replace(/[*_`#>~]/g, '')
    .trim();
  return plain.length <= 130 ? plain : `${plain.slice(0, 130).replace(/\s+\S*$/, '')} …`;
}

// Everything that stands against one hold point, each with who can take it out of the way.
import type { SheetView } from '@/lib/service/views/sheet';
import type { BlockerView, HoldPointView } from '@/lib/service/views/signing';
import { DecideForm } from './decide-form';

export function BlockerList({ point, sheet }: { readonly point: HoldPointView; readonly sheet: SheetView }) {
  if (point.blockers.length === 0) return null;
  return (
    <details id={`against-${point.key}`}>
      <summary>
        all that stands against {point.label.toLowerCase()} ({point.blockers.length})
      </summary>
      <ul className="plain-list ruled-list">
        {point.blockers.map((b) => (
          <li key={b.key}>
            {b.sentence} <span className="hush">{b.remover}</span>
            {b.mayDispose && b.dispose !== null ? (
              <DecideForm sheet={sheet} {...b.dispose} about={b.sentence} />
            ) : null}
          </li>
        ))}
      </ul>
    </details>
  );
}

const kinds: readonly { readonly prefix: string; readonly one: string; readonly many: string }[] = [
  { prefix: 'superseded', one: 'a later revision', many: 'later revisions' },
  { prefix: 'holding', one: 'the rig is not held', many: 'the rig is not held' },
  { prefix: 'ladder', one: 'nothing could be assessed', many: 'nothing could be assessed' },
  { prefix: 'finding', one: 'open finding', many: 'open findings' },
  { prefix: 'check', one: 'check that falls short', many: 'checks that fall short' },
  { prefix: 'thread', one: 'open thread', many: 'open threads' },
  { prefix: 'earlier', one: 'earlier hold point', many: 'earlier hold points' },
];

/** What blocks, counted by kind, e.g. `4 open findings`; a single blocker in its own sentence. */
export function blockerSummary(blockers: readonly BlockerView[]): string[] {
  if (blockers.length <= 2) return blockers.map((b) => `${b.sentence} ${b.remover}`);
  return kinds.flatMap(({ prefix, one, many }) => {
    const count = blockers.filter((b) => b.key.split(':')[0] === prefix).length;
    return count === 0 ? [] : [count === 1 ? `1 ${one}` : `${count} ${many}`];
  });
}

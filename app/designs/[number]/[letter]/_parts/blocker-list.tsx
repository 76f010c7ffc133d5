// Everything that stands against one hold point, each with who can take it out of the way.
import type { SheetView } from '@/lib/service/views/sheet';
import type { BlockerView, HoldPointView } from '@/lib/service/views/signing';
import { DecideLink } from './decide-link';

export function BlockerList({ point, sheet }: { readonly point: HoldPointView; readonly sheet: SheetView }) {
  if (point.blockers.length === 0) return null;
  return (
    <details id={`against-${point.key}`}>
      <summary>
        All that stands against {point.label.toLowerCase()} ({point.blockers.length})
      </summary>
      <ul className="plain-list ruled-list">
        {point.blockers.map((b) => (
          <li key={b.key}>
            {b.sentence} <span className="hush">{b.remover}</span>
            {b.mayDispose && b.dispose !== null ? (
              <DecideLink sheet={sheet} about={b.dispose.findingKey} words={b.sentence} />
            ) : null}
          </li>
        ))}
      </ul>
    </details>
  );
}

const kinds: Readonly<Record<string, (count: number) => string>> = {
  superseded: () => 'a later revision stands in its place',
  holding: () => 'the rig is not held',
  ladder: () => 'nothing could be assessed',
  finding: (n) => (n === 1 ? '1 open finding' : `${n} open findings`),
  check: (n) => (n === 1 ? '1 check that falls short' : `${n} checks that fall short`),
  thread: (n) => (n === 1 ? '1 open thread' : `${n} open threads`),
  earlier: (n) => (n === 1 ? '1 earlier hold point' : `${n} earlier hold points`),
};

/** What blocks, counted by kind, e.g. `4 open findings`; one or two blockers in their own sentences. */
export function blockerSummary(blockers: readonly BlockerView[]): string[] {
  if (blockers.length <= 2) return blockers.map((b) => `${b.sentence} ${b.remover}`);
  return Object.entries(kinds).flatMap(([prefix, words]) => {
    const count = blockers.filter((b) => b.key.split(':')[0] === prefix).length;
    return count === 0 ? [] : [words(count)];
  });
}

// Hold points as ruled cells: a hold point stops the work until it is released.
import type { ReactNode } from 'react';

export type HoldState = 'held' | 'open' | 'passed' | 'not reached';

export interface HoldPointView {
  readonly key: string;
  /** E.g. `Bench spin`. */
  readonly name: string;
  readonly state: HoldState;
  /** Who released it and when, or what it waits for. */
  readonly detail: string;
  /** What keeps it held, one sentence each. */
  readonly blockers: readonly string[];
  /** A button or link. */
  readonly action?: ReactNode;
}

const words: Readonly<Record<HoldState, string>> = {
  held: 'Held',
  open: 'Open',
  passed: 'Passed',
  'not reached': 'Not reached',
};

/** The hold points of a revision in their order. */
export function HoldPoints({ points }: { readonly points: readonly HoldPointView[] }) {
  return (
    <div className="hold-points">
      {points.map((p) => (
        <section key={p.key} className="hold-point" data-state={p.state.replace(' ', '-')}>
          <h3 className="label">{p.name}</h3>
          <p className="hold-state">{words[p.state]}</p>
          <p className="hush">{p.detail}</p>
          {p.blockers.length === 0 ? null : (
            <ul>
              {p.blockers.map((b) => (
                <li key={b}>{b}</li>
              ))}
            </ul>
          )}
          {p.action === undefined ? null : <div className="hold-point-actions">{p.action}</div>}
        </section>
      ))}
    </div>
  );
}

// Findings: what is the case, what to do about it, and folded away why it matters and where the rule comes from.
import type { ReactNode } from 'react';
import type { Finding, FindingClass } from '@/lib/assess/assessment';
import { Pins } from '../checks/pins';
import type { RemarkPin } from '../checks/remark-pin';
import { airy } from '../marks/airy';

interface FindingListProps {
  readonly findings: readonly Finding[];
  readonly pins?: readonly RemarkPin[] | undefined;
  /** What stands under a finding: its disposition, a form to set one. */
  readonly under?: ((finding: Finding) => ReactNode) | undefined;
  /** Sentence for an empty list. */
  readonly none?: string | undefined;
}

const ranks: Readonly<Record<FindingClass, number>> = { critical: 0, major: 1, minor: 2 };

/** Findings in order of class, the gravest first. */
export function FindingList({ findings, pins, under, none = 'No rule fired.' }: FindingListProps) {
  if (findings.length === 0) return <p className="hush">{none}</p>;
  const sorted = findings.toSorted((a, b) => ranks[a.class] - ranks[b.class]);
  return (
    <ul className="findings">
      {sorted.map((f) => (
        <li key={f.key} id={`finding-${f.key}`} className="finding" data-class={f.class}>
          <p>
            <strong className="finding-class">{f.class}</strong> {airy(f.text)}
            <Pins pins={pins} at={f.key} />
          </p>
          <p className="finding-advice">{airy(f.advice)}</p>
          <details>
            <summary>Why, and by which rule</summary>
            <p className="hush">{airy(f.reason)}</p>
            <p className="hush">Source: {f.source}</p>
          </details>
          {under?.(f)}
        </li>
      ))}
    </ul>
  );
}

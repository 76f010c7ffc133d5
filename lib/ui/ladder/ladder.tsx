// The ladder: what every element holds as output torque, in rising order, against what is asked and what is forced.
import type { Check, Headline } from '@/lib/assess/assessment';
import { Quantity } from '../marks/quantity';
import { chooseRows } from './choose';
import { LadderDrawing } from './ladder-drawing';
import { LadderKey } from './ladder-key';
import { ladderLayout } from './layout';
import { ladderSummary } from './summary';

interface LadderProps {
  /** All checks of the assessment; those on the ladder are drawn. */
  readonly checks: readonly Check[];
  readonly headline: Headline;
}

/** Draws the ladder with a summary for the ear; the check tables hold the same numbers. */
export function Ladder({ checks, headline }: LadderProps) {
  const choice = chooseRows(checks);
  if (choice.assessed.length + choice.unknown.length === 0) {
    return (
      <p>No element of this design has a limit as an output torque, so there is nothing to draw here.</p>
    );
  }
  const wide = ladderLayout('wide', choice, headline);
  const narrow = ladderLayout('narrow', choice, headline);
  const scatter = wide.rows.some((r) => r.arrow?.low != null && r.arrow.high !== null);
  return (
    <figure className="drawing-figure">
      <div role="img" aria-label={ladderSummary(choice, headline)}>
        <LadderDrawing layout={wide} />
        <LadderDrawing layout={narrow} />
      </div>
      <LadderKey
        forced={headline.forced !== null}
        hatch={wide.hatch !== null}
        unknown={choice.unknown.length > 0}
        scatter={scatter}
      />
      <More
        checks={choice.higher}
        words={(n) => (n === 1 ? '1 more that holds higher' : `${n} more that hold higher`)}
      />
      <More checks={choice.moreUnknown} words={(n) => `and ${n} more that are not assessed`} />
    </figure>
  );
}

function More({
  checks,
  words,
}: {
  readonly checks: readonly Check[];
  readonly words: (n: number) => string;
}) {
  if (checks.length === 0) return null;
  return (
    <details className="ladder-more">
      <summary>{words(checks.length)}</summary>
      <ul>
        {checks.map((c) => (
          <li key={c.key}>
            {c.label}: {c.holdsTo === null ? c.missing : <Quantity si={c.holdsTo} unit="N m" />}
          </li>
        ))}
      </ul>
    </details>
  );
}

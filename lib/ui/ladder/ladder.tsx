// The ladder: what every element holds as output torque, in rising order, against what is asked and what is forced.
import type { ReactNode } from 'react';
import type { Check, Headline } from '@/lib/assess/assessment';
import { workedPlace } from '../checks/worked-place';
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
  /** Address of the worked sheet; each element then leads to its steps there, or unfolds them below the drawing. */
  readonly workedHref?: string | undefined;
}

/** Draws the ladder with a summary for the ear; the check tables hold the same numbers. */
export function Ladder({ checks, headline, workedHref }: LadderProps) {
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
      <Around pressed={workedHref !== undefined} summary={ladderSummary(choice, headline)}>
        <LadderDrawing layout={wide} workedHref={workedHref} />
        <LadderDrawing layout={narrow} workedHref={workedHref} />
      </Around>
      <LadderKey
        forced={headline.forced !== null}
        hatch={wide.hatch !== null}
        unknown={choice.unknown.length > 0}
        scatter={scatter}
        pressed={workedHref !== undefined}
      />
      <More
        checks={choice.higher}
        workedHref={workedHref}
        words={(n) => (n === 1 ? '1 more that holds higher' : `${n} more that hold higher`)}
      />
      <More
        checks={choice.moreUnknown}
        workedHref={workedHref}
        words={(n) => `and ${n} more that are not assessed`}
      />
    </figure>
  );
}

interface AroundProps {
  readonly pressed: boolean;
  readonly summary: string;
  readonly children: ReactNode;
}

/** A picture holds nothing to press; a group may. */
function Around({ pressed, summary, children }: AroundProps) {
  if (!pressed)
    return (
      <div role="img" aria-label={summary}>
        {children}
      </div>
    );
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset is for forms
    <div role="group" aria-label={summary}>
      {children}
    </div>
  );
}

interface MoreProps extends Pick<LadderProps, 'checks' | 'workedHref'> {
  readonly words: (n: number) => string;
}

function More({ checks, workedHref, words }: MoreProps) {
  if (checks.length === 0) return null;
  return (
    <details className="ladder-more">
      <summary>{words(checks.length)}</summary>
      <ul>
        {checks.map((c) => (
          <li key={c.key}>
            <Name check={c} workedHref={workedHref} />:{' '}
            {c.holdsTo === null ? c.missing : <Quantity si={c.holdsTo} unit="N m" />}
          </li>
        ))}
      </ul>
    </details>
  );
}

function Name({ check, workedHref }: { readonly check: Check } & Pick<LadderProps, 'workedHref'>) {
  const href = workedHref === undefined ? null : workedPlace(workedHref, check);
  if (href === null) return check.label;
  return (
    <a href={href} data-follow={`check-${check.key}`}>
      {check.label}
    </a>
  );
}

// The checks of a section: those of one kind in a table each, so that what is compared stands in one column.
import type { ReactNode } from 'react';
import { type Check, modeLabels } from '@/lib/assess/assessment';
import { Factor } from '../marks/factor';
import { StatusMark } from '../marks/status-mark';
import { CheckTable } from './check-table';
import { byKind, elementOf, type Kind } from './kinds';
import type { RemarkPin } from './remark-pin';
import { workedPlace } from './worked-place';

interface CheckTablesProps {
  /** Name of the section, for the table of those that stand alone. */
  readonly label: string;
  readonly checks: readonly Check[];
  readonly workedHref?: string | undefined;
  readonly pins?: readonly RemarkPin[] | undefined;
  /**
   * Tables of which every check holds are folded to one line, so that what does not hold is seen; and so are more than a
   * few checks that are not assessed.
   */
  readonly fold?: boolean | undefined;
  /** Key of the weakest link: its table is never folded. */
  readonly weakest?: string | null | undefined;
}

/** As many stand open for the sake of one line less; more are folded. */
const few = 3;

export function CheckTables({ fold = false, weakest = null, pins = [], ...tables }: CheckTablesProps) {
  const { label, checks, workedHref } = tables;
  const tells = (c: Check) => c.key === weakest || pins.some((p) => p.at === c.key);
  const unknown = checks.filter((c) => c.status === 'not assessed' && !tells(c));
  const foldsUnknown = fold && unknown.length > few;
  const shown = foldsUnknown ? checks.filter((c) => !unknown.includes(c)) : checks;
  const held = (c: Check) => c.status === 'holds' && !tells(c);
  const kinds = fold ? byKind(shown).flatMap((kind) => apart(kind, held)) : byKind(shown);
  return (
    <>
      {kinds.map((kind) => {
        const table = (
          <CheckTable
            key={kind.key}
            caption={kind.label === '' ? `Checks: ${label}` : kind.label}
            oneKind={kind.label !== ''}
            checks={kind.checks}
            workedHref={workedHref}
            pins={pins}
          />
        );
        return fold && kind.checks.every(held) ? (
          <Folded key={kind.key} kind={kind}>
            {table}
          </Folded>
        ) : (
          table
        );
      })}
      {foldsUnknown ? <FoldedUnknown checks={unknown} workedHref={workedHref} /> : null}
    </>
  );
}

/** Those that stand alone are compared with none: what holds of them is folded apart from what does not. */
function apart(kind: Kind, held: (check: Check) => boolean): readonly Kind[] {
  const holding = kind.checks.filter(held);
  const telling = kind.checks.filter((c) => !held(c));
  if (kind.label !== '' || holding.length <= few || telling.length === 0) return [kind];
  return [
    { ...kind, checks: telling },
    { ...kind, key: `${kind.key} held`, checks: holding },
  ];
}

/** What is not assessed, under what it lacks. */
function FoldedUnknown({ checks, workedHref }: Pick<CheckTablesProps, 'checks' | 'workedHref'>) {
  const reasons = new Map<string, Check[]>();
  for (const check of checks) {
    const reason = check.missing ?? 'no reason is given.';
    reasons.set(reason, [...(reasons.get(reason) ?? []), check]);
  }
  return (
    <details className="held">
      <summary>
        <span className="held-name">{checks.length} checks are not assessed</span>
        <span className="held-words">
          {reasons.size === 1 ? 'for one reason' : `for ${reasons.size} reasons`}
        </span>
        <StatusMark status="not assessed" />
      </summary>
      <ul className="unknown-checks">
        {[...reasons].map(([reason, lacking]) => (
          <li key={reason}>
            {reason}
            <ul>
              {lacking.map((c) => (
                <li key={c.key} id={`check-${c.key}`}>
                  <UnknownName check={c} workedHref={workedHref} />{' '}
                  <span className="row-mode">{modeLabels[c.mode]}</span>
                </li>
              ))}
            </ul>
          </li>
        ))}
      </ul>
    </details>
  );
}

/** One side of a check that is not assessed may be known, and can then be followed. */
function UnknownName({
  check,
  workedHref,
}: { readonly check: Check } & Pick<CheckTablesProps, 'workedHref'>) {
  const href = workedHref === undefined ? null : workedPlace(workedHref, check);
  if (href === null) return check.label;
  return (
    <a href={href} data-follow={`check-${check.key}`}>
      {check.label}
    </a>
  );
}

interface FoldedProps {
  readonly kind: Kind;
  readonly children: ReactNode;
}

/** Says how many hold and which of them is nearest to what is required. */
function Folded({ kind, children }: FoldedProps) {
  const [nearest] = kind.checks.toSorted((a, b) => margin(a) - margin(b));
  const count = kind.checks.length;
  return (
    <details className="held">
      <summary>
        <span className="held-name">
          {kind.label === '' ? '' : `${kind.label}: `}
          {count === 1 ? '1 check holds' : `${count} checks hold`}
        </span>
        {nearest === undefined ? null : (
          <span className="held-words">
            {count === 1 ? '' : 'nearest to what is required: '}
            {kind.label === '' ? nearest.label : elementOf(nearest)}, <Factor value={nearest.factor} /> where{' '}
            <Factor value={nearest.required} /> is required
          </span>
        )}
        <StatusMark status="holds" />
      </summary>
      {children}
    </details>
  );
}

/** How far a check that holds is above what it requires. */
function margin({ factor, required }: Check): number {
  return factor === null ? Number.POSITIVE_INFINITY : factor / required;
}

// The checks of a section: those of one kind in a table each, so that what is compared stands in one column.
import type { ReactNode } from 'react';
import type { Check } from '@/lib/assess/assessment';
import { Factor } from '../marks/factor';
import { StatusMark } from '../marks/status-mark';
import { CheckTable } from './check-table';
import { byKind, elementOf, type Kind } from './kinds';
import type { RemarkPin } from './remark-pin';

interface CheckTablesProps {
  /** Name of the section, for the table of those that stand alone. */
  readonly label: string;
  readonly checks: readonly Check[];
  readonly workedHref?: string | undefined;
  readonly pins?: readonly RemarkPin[] | undefined;
  /** Tables of which every check holds are folded to one line, so that what does not hold is seen. */
  readonly fold?: boolean | undefined;
  /** Key of the weakest link: its table is never folded. */
  readonly weakest?: string | null | undefined;
}

export function CheckTables({
  label,
  checks,
  workedHref,
  pins = [],
  fold = false,
  weakest = null,
}: CheckTablesProps) {
  return byKind(checks).map((kind) => {
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
    const tells = kind.checks.some(
      (c) => c.status !== 'holds' || c.key === weakest || pins.some((p) => p.at === c.key),
    );
    return fold && !tells ? (
      <Folded key={kind.key} kind={kind}>
        {table}
      </Folded>
    ) : (
      table
    );
  });
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

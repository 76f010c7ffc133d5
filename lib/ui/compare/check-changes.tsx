// What the changes did to the checks: factor and torque before and after, and which crossed their requirement.
import type { ReactNode } from 'react';
import { type CheckStatus, modeLabels } from '@/lib/assess/assessment';
import type { ChangedCheck } from '@/lib/compare/comparison';
import { Factor } from '../marks/factor';
import { Quantity } from '../marks/quantity';
import { StatusMark } from '../marks/status-mark';
import { RuledTable } from '../table/ruled-table';
import { Change, signedFactor, signedShare } from './change';

interface CheckChangesProps {
  readonly caption: string;
  readonly checks: readonly ChangedCheck[];
}

/** Table of checks that changed; those that crossed come first. */
export function CheckChanges({ caption, checks }: CheckChangesProps) {
  if (checks.length === 0) return <p>No factor changed.</p>;
  const sorted = checks.toSorted((a, b) => Number(b.crossed) - Number(a.crossed));
  return (
    <RuledTable
      caption={caption}
      columns={[
        { label: 'Check' },
        { label: 'Factor', kind: 'number' },
        { label: 'Change', kind: 'number' },
        { label: 'Required', kind: 'number' },
        { label: 'Holds to', kind: 'number' },
        { label: 'Standing', kind: 'mark', silent: true },
      ]}
      rows={sorted.map((c) => ({
        key: c.key,
        tone: c.statusAfter === 'below' ? 'below' : c.statusAfter === 'holds' ? 'plain' : 'unknown',
        cells: [
          <span key="name">
            {c.label} <span className="row-mode">{modeLabels[c.mode]}</span>
          </span>,
          <Change
            key="f"
            before={<Factor value={c.factorBefore} />}
            after={<Factor value={c.factorAfter} />}
            verdict={c.verdict}
          />,
          <span key="c" className="number">
            {signedFactor(c.change)}
            {c.relative === null ? null : <span className="unit"> ({signedShare(c.relative)})</span>}
          </span>,
          <Required key="r" before={c.requiredBefore} after={c.required} />,
          <Change
            key="h"
            before={<Quantity si={c.holdsToBefore} unit="N m" />}
            after={<Quantity si={c.holdsToAfter} unit="N m" />}
          />,
          <Standing key="s" after={c.statusAfter} />,
        ],
        note: crossing(c),
      }))}
    />
  );
}

/** The factor required; when the designs ask for different ones, both. */
function Required({ before, after }: { readonly before: number | null; readonly after: number }) {
  if (before === null || before === after) return <Factor value={after} />;
  return <Change before={<Factor value={before} />} after={<Factor value={after} />} />;
}

function Standing({ after }: { readonly after: CheckStatus | null }): ReactNode {
  return after === null ? <span className="hush">no longer there</span> : <StatusMark status={after} />;
}

function crossing(c: ChangedCheck): string | undefined {
  if (!c.crossed) return undefined;
  const before = c.statusBefore ?? 'not there';
  const after = c.statusAfter ?? 'not there';
  return `It was: ${before}. It is now: ${after}.`;
}

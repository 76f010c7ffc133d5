// What the changes did to the checks: factor and torque before and after, and which crossed their requirement.
import type { ReactNode } from 'react';
import { type CheckStatus, modeLabels } from '@/lib/assess/assessment';
import type { ChangedCheck } from '@/lib/compare/comparison';
import { Factor } from '../marks/factor';
import { Quantity } from '../marks/quantity';
import { StatusMark } from '../marks/status-mark';
import { RuledTable } from '../table/ruled-table';
import { Change, signedFactor, signedShare } from './change';
import { FollowedName } from './followed-name';

interface CheckChangesProps {
  readonly caption: string;
  readonly checks: readonly ChangedCheck[];
  /** Address of the sheet on which the checks stand; each then leads there, or unfolds both its sides in its place. */
  readonly sheetHref?: string | undefined;
}

/** Table of checks that changed; those that crossed come first. */
export function CheckChanges({ caption, checks, sheetHref }: CheckChangesProps) {
  if (checks.length === 0) return <p>No factor changed.</p>;
  const telling = checks.filter(tells).toSorted((a, b) => Number(b.crossed) - Number(a.crossed));
  const others = checks.filter((c) => !tells(c));
  return (
    <>
      {telling.length === 0 ? (
        <p>No check crossed what is required, and none falls short.</p>
      ) : (
        <Changes caption={caption} checks={telling} sheetHref={sheetHref} />
      )}
      {others.length === 0 ? null : (
        <details>
          <summary>
            {others.length === 1 ? '1 check moved and holds' : `${others.length} checks moved and hold`} as
            before, or came new and hold
          </summary>
          <Changes caption={`${caption} that hold as before`} checks={others} sheetHref={sheetHref} />
        </details>
      )}
    </>
  );
}

/** What a reader must see: it crossed what is required, or it does not hold now. */
function tells(c: ChangedCheck): boolean {
  return c.crossed || c.statusAfter !== 'holds';
}

function Changes({ caption, checks, sheetHref }: CheckChangesProps) {
  return (
    <RuledTable
      caption={caption}
      layout="changes"
      columns={[
        { label: 'Check' },
        { label: 'Factor', kind: 'number' },
        { label: 'Change', kind: 'number' },
        { label: 'Required', kind: 'number' },
        { label: 'Holds to', kind: 'number' },
        { label: 'Standing', kind: 'mark', silent: true },
      ]}
      rows={checks.map((c) => ({
        key: c.key,
        tone: c.statusAfter === 'below' ? 'below' : c.statusAfter === 'holds' ? 'plain' : 'unknown',
        cells: [
          <span key="name">
            <FollowedName of={`check-${c.key}`} sheetHref={sheetHref}>
              {c.label}
            </FollowedName>{' '}
            <span className="row-mode">{modeLabels[c.mode]}</span>
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
          <HoldsTo key="h" check={c} />,
          <Standing key="s" after={c.statusAfter} />,
        ],
        note: crossing(c),
      }))}
    />
  );
}

/** Torque it holds to, before and after; a dash for a check that limits no torque. */
function HoldsTo({ check: c }: { readonly check: ChangedCheck }) {
  if (c.holdsToBefore === null && c.holdsToAfter === null) return <span className="unit">–</span>;
  return (
    <Change
      before={<Quantity si={c.holdsToBefore} unit="N m" />}
      after={<Quantity si={c.holdsToAfter} unit="N m" />}
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

const said: Readonly<Record<CheckStatus | 'absent', { readonly before: string; readonly after: string }>> = {
  below: { before: 'Fell short before', after: 'falls short now' },
  holds: { before: 'Held before', after: 'holds now' },
  'not assessed': { before: 'Was not assessed before', after: 'is not assessed now' },
  absent: { before: 'Was not there before', after: 'is no longer there' },
};

function crossing(c: ChangedCheck): string | undefined {
  if (!c.crossed) return undefined;
  return `${said[c.statusBefore ?? 'absent'].before}; ${said[c.statusAfter ?? 'absent'].after}.`;
}

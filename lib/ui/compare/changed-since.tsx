// What a revision changed since the one before: the fields with triangle and cloud, then what follows from them.
import type { ReactNode } from 'react';
import { modeLabels } from '@/lib/assess/assessment';
import type { ChangedCheck, Comparison } from '@/lib/compare/comparison';
import { Factor } from '../marks/factor';
import { Quantity } from '../marks/quantity';
import { StatusMark } from '../marks/status-mark';
import { PartFold } from '../sheet/part-fold';
import { type Row, RuledTable } from '../table/ruled-table';
import { Change } from './change';
import { FieldChanges } from './field-changes';
import { FollowedName } from './followed-name';

interface ChangedSinceProps
  extends Pick<Comparison, 'fields' | 'items' | 'headlineBefore' | 'headlineAfter' | 'checks'> {
  /** Letters of the revision before and of this one. */
  readonly since: string;
  readonly letter: string;
  readonly raised: number;
  readonly cleared: number;
  readonly sameMethod: boolean;
}

/** As many changed fields, and checks that hold now, stand open; more are folded to one line. */
const few = 12;

/** Changed fields, and below them the consequences: weakest link, what can be forced, checks that crossed. */
export function ChangedSince({ inFull, ...p }: ChangedSinceProps & { readonly inFull: string | undefined }) {
  const gained = p.checks.filter((c) => c.statusAfter === 'holds');
  const foldsGained = gained.length > few;
  const told = foldsGained ? p.checks.filter((c) => !gained.includes(c)) : p.checks;
  const rows = [...headlineRows(p.headlineBefore, p.headlineAfter), ...told.map(checkRow)];
  return (
    <>
      {p.fields.length > few ? (
        <PartFold
          id={changedFolds.fields}
          summary={`${p.fields.length} fields changed`}
          what={`the ${p.fields.length} fields that differ from revision ${p.since}`}
          inFull={inFull}
          open
        >
          <ChangedFields {...p} />
        </PartFold>
      ) : (
        <ChangedFields {...p} />
      )}
      {rows.length > 0 ? (
        <Consequences caption="What follows from the changes" rows={rows} {...p} />
      ) : foldsGained ? null : (
        <p>The weakest link and what the drive can force are as before; no check crossed what is required.</p>
      )}
      {foldsGained ? (
        <PartFold
          id={changedFolds.gained}
          summary={`${gained.length} checks hold that did not, or were not assessed`}
          what={`the ${gained.length} checks that hold since this revision`}
          inFull={inFull}
          open
        >
          <ChecksGained {...p} />
        </PartFold>
      ) : null}
      <p className="hush">
        {findingWords(p.raised, p.cleared)}
        {p.sameMethod ? '' : ' The two were assessed by different methods: some of this may be the method’s.'}
      </p>
    </>
  );
}

/** Names of the two folds within the page. */
export const changedFolds = { fields: 'changed-fields', gained: 'changed-gained' } as const;

/** What the first of them holds. */
export function ChangedFields({ fields, items, since, letter }: ChangedSinceProps) {
  return (
    <FieldChanges
      fields={fields}
      items={items}
      before={`Revision ${since}`}
      after={`Revision ${letter}`}
      letter={letter}
    />
  );
}

/** What the second holds. */
export function ChecksGained(p: ChangedSinceProps) {
  const rows = p.checks.filter((c) => c.statusAfter === 'holds').map(checkRow);
  return <Consequences caption="Checks that hold now" rows={rows} {...p} />;
}

interface ConsequencesProps extends Pick<ChangedSinceProps, 'since' | 'letter'> {
  readonly caption: string;
  readonly rows: readonly Row[];
}

function Consequences({ caption, rows, since, letter }: ConsequencesProps) {
  return (
    <RuledTable
      caption={caption}
      captionShown
      layout="follows"
      columns={[
        { label: 'What' },
        { label: `${since} → ${letter}`, kind: 'number' },
        { label: 'Required', kind: 'number' },
        { label: 'Standing', kind: 'mark', silent: true },
      ]}
      rows={rows}
    />
  );
}

type Side = Comparison['headlineBefore'];

function headlineRows(before: Side, after: Side): Row[] {
  const weakest = (
    <>
      The weakest link holds to
      <span className="hush under">
        {before.weakest === after.weakest ? named(after) : `before: ${named(before)}; now: ${named(after)}`}
      </span>
    </>
  );
  return [
    ...torqueRow('holds', weakest, before.holdsTo, after.holdsTo),
    ...torqueRow('asked', 'The duty asks', before.demanded, after.demanded),
    ...torqueRow('forced', 'The drive can force', before.forced, after.forced),
  ];
}

function named({ label }: Side): string {
  return label ?? 'not assessed';
}

function torqueRow(key: string, what: ReactNode, before: number | null, after: number | null): Row[] {
  if (before === after) return [];
  const change = (
    <Change key="c" before={<Quantity si={before} unit="N m" />} after={<Quantity si={after} unit="N m" />} />
  );
  return [{ key, cells: [what, change, null, null] }];
}

function checkRow(c: ChangedCheck): Row {
  return {
    key: c.key,
    tone: c.statusAfter === 'below' ? 'below' : c.statusAfter === 'holds' ? 'plain' : 'unknown',
    cells: [
      <span key="name">
        {c.statusAfter === null ? (
          c.label
        ) : (
          <FollowedName of={`check-${c.key}`} sheetHref="">
            {c.label}
          </FollowedName>
        )}{' '}
        <span className="row-mode">{modeLabels[c.mode]}, factor</span>
      </span>,
      c.statusBefore === null ? (
        <span key="f" className="change-new">
          <span className="hush">new</span> <Factor value={c.factorAfter} />
        </span>
      ) : (
        <Change
          key="f"
          before={<Factor value={c.factorBefore} />}
          after={<Factor value={c.factorAfter} />}
          verdict={c.verdict}
        />
      ),
      <Factor key="r" value={c.required} />,
      c.statusAfter === null ? (
        <span key="s" className="hush">
          no longer there
        </span>
      ) : (
        <StatusMark key="s" status={c.statusAfter} />
      ),
    ],
  };
}

function findingWords(raised: number, cleared: number): string {
  if (raised + cleared === 0) return 'No finding came or went.';
  return `Findings: ${raised === 0 ? 'none' : raised} raised, ${cleared === 0 ? 'none' : cleared} cleared.`;
}

// Demand against capacity, one row a check: the numbers, the factor, the factor required, and the word for how it stands.
import { type Check, modeLabels } from '@/lib/assess/assessment';
import { Factor } from '../marks/factor';
import { Quantity } from '../marks/quantity';
import { StatusMark } from '../marks/status-mark';
import { type Column, type Row, RuledTable } from '../table/ruled-table';
import { elementOf } from './kinds';
import { Pins } from './pins';
import type { RemarkPin } from './remark-pin';
import { workedPlace } from './worked-place';

interface CheckTableProps {
  /** What the table shows, e.g. `Checks of the teeth`. */
  readonly caption: string;
  /** All rows are of the kind that the caption names: it is shown, and the rows name their elements only. */
  readonly oneKind?: boolean | undefined;
  readonly checks: readonly Check[];
  /** Address of the worked sheet; each check then leads to its own steps there, or unfolds them in its place. */
  readonly workedHref?: string | undefined;
  readonly pins?: readonly RemarkPin[] | undefined;
}

/** Table of checks, usually those of one section. */
export function CheckTable({ caption, oneKind = false, checks, workedHref, pins }: CheckTableProps) {
  const demand = common(checks.map((c) => c.demandLabel));
  const capacity = common(checks.map((c) => c.capacityLabel));
  const rows = checks.map((check) => checkRow(check, { demand, capacity, oneKind, workedHref, pins }));
  return (
    <div className="check-table">
      <RuledTable
        caption={caption}
        captionShown={oneKind}
        layout="checks"
        columns={columns(demand, capacity)}
        rows={rows}
      />
      <Caveats checks={checks} oneKind={oneKind} />
    </div>
  );
}

function columns(demand: string | null, capacity: string | null): Column[] {
  return [
    { label: 'Check' },
    { label: demand ?? 'Demand', kind: 'number' },
    { label: capacity ?? 'Capacity', kind: 'number' },
    { label: 'Factor', kind: 'number' },
    { label: 'Required', kind: 'number' },
    { label: 'Holds to', kind: 'number' },
    { label: 'Standing', kind: 'mark', silent: true },
  ];
}

/** What the results rest on, each said once with the rows it is true of. */
function Caveats({ checks, oneKind }: Pick<CheckTableProps, 'checks' | 'oneKind'>) {
  const caveats = [...new Set(checks.flatMap((c) => c.caveat ?? []))];
  if (caveats.length === 0) return null;
  return (
    <ul className="caveats hush">
      {caveats.map((caveat) => {
        const rows = checks.filter((c) => c.caveat === caveat);
        const who =
          rows.length === checks.length
            ? ''
            : `${rows.map((c) => (oneKind === true ? elementOf(c) : c.label)).join('; ')}. `;
        return (
          <li key={caveat}>
            {who}
            {caveat}
          </li>
        );
      })}
    </ul>
  );
}

interface RowSetting extends Pick<CheckTableProps, 'workedHref' | 'pins'> {
  readonly demand: string | null;
  readonly capacity: string | null;
  readonly oneKind: boolean;
}

function checkRow(check: Check, { demand, capacity, oneKind, workedHref, pins }: RowSetting): Row {
  return {
    key: check.key,
    id: `check-${check.key}`,
    tone: check.status === 'below' ? 'below' : check.status === 'not assessed' ? 'unknown' : 'plain',
    cells: [
      <CheckName key="name" check={check} oneKind={oneKind} workedHref={workedHref} pins={pins} />,
      <Quantity key="demand" si={check.demand} unit={check.unit} />,
      <Quantity key="capacity" si={check.capacity} unit={check.unit} />,
      <span key="factor" className={check.status === 'below' ? 'warn factor-below' : undefined}>
        <Factor value={check.factor} />
      </span>,
      <span key="required" title={check.requiredFrom}>
        <Factor value={check.required} />
      </span>,
      check.onLadder ? <Quantity key="holds" si={check.holdsTo} unit="N m" /> : <NoTorque key="holds" />,
      <StatusMark key="mark" status={check.status} />,
    ],
    note: noteOf(check, demand === null || capacity === null),
  };
}

function CheckName({
  check,
  oneKind,
  workedHref,
  pins,
}: { readonly check: Check } & Pick<RowSetting, 'oneKind' | 'workedHref' | 'pins'>) {
  const name = oneKind ? elementOf(check) : check.label;
  const href = workedHref === undefined ? null : workedPlace(workedHref, check);
  return (
    <>
      {href === null ? (
        name
      ) : (
        <a href={href} data-follow="">
          {name}
        </a>
      )}{' '}
      {oneKind ? null : <span className="row-mode">{modeLabels[check.mode]}</span>}
      <Pins pins={pins} at={check.key} />
    </>
  );
}

/** Demand and capacity by name where the rows of the table do not share them; why nothing could be assessed. */
function noteOf(check: Check, named: boolean): string | undefined {
  const sides = named ? [`${check.demandLabel}, against: ${lower(check.capacityLabel)}.`] : [];
  const why =
    check.status === 'not assessed' ? [`Not assessed: ${check.missing ?? 'no reason is given.'}`] : [];
  return sides.length + why.length === 0 ? undefined : [...sides, ...why].join(' ');
}

/** Without its capital, unless it begins with an abbreviation. */
function lower(words: string): string {
  return /^[A-Z][a-z]/.test(words) ? `${words.charAt(0).toLowerCase()}${words.slice(1)}` : words;
}

/** A check whose limit is no output torque has none to hold to: that is not the same as not assessed. */
function NoTorque() {
  return <span className="unit">no torque limit</span>;
}

function common(labels: readonly string[]): string | null {
  const first = labels[0];
  return first !== undefined && labels.every((l) => l === first) ? first : null;
}

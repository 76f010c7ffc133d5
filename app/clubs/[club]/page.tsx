// The shelf of a club: each design with its latest revision, where it stands, what would break first, and what waits.
import type { Metadata } from 'next';
import Link from 'next/link';
import { addresses } from '@/app/_parts/addresses';
import { PageFrame } from '@/app/_parts/page-frame';
import { shown } from '@/app/_parts/shown';
import { clubShelf } from '@/lib/service/designs/shelf';
import { currentViewer } from '@/lib/service/sign-in/page-session';
import type { ShelfRow, ShelfView } from '@/lib/service/views/shelf';
import { LinkButton } from '@/lib/ui/forms/button';
import { printFactor } from '@/lib/ui/marks/factor';
import { Quantity } from '@/lib/ui/marks/quantity';
import { Moment } from '@/lib/ui/marks/time';
import { WordMark } from '@/lib/ui/marks/word-mark';
import { Caution } from '@/lib/ui/notices/caution';
import { EmptyState } from '@/lib/ui/notices/empty-state';
import { MarginBlock } from '@/lib/ui/sheet/margin-block';
import { PlainTitle } from '@/lib/ui/sheet/plain-title';
import { Sheet } from '@/lib/ui/sheet/sheet';
import { View } from '@/lib/ui/sheet/view';
import { RuledTable } from '@/lib/ui/table/ruled-table';

interface Props {
  readonly params: Promise<{ club: string }>;
}

export const metadata: Metadata = { title: 'Shelf' };

export default async function ShelfPage({ params }: Props) {
  const { club } = await params;
  const result = await clubShelf(await currentViewer(), { club });
  return shown(result, (shelf) => (
    <PageFrame club={club} current="shelf">
      <Sheet
        title={<ShelfTitle shelf={shelf} />}
        marginLabel="What waits for you"
        margin={<Margin shelf={shelf} />}
      >
        <View letter="A" title="Designs">
          {shelf.rows.length === 0 ? <Empty shelf={shelf} /> : <Designs rows={shelf.rows} />}
        </View>
      </Sheet>
    </PageFrame>
  ));
}

function ShelfTitle({ shelf }: { readonly shelf: ShelfView }) {
  const count = shelf.rows.length;
  return (
    <PlainTitle
      over="Club shelf"
      title={shelf.club.name}
      cells={[
        { label: 'Designs', content: String(count) },
        { label: 'Released for a test', content: String(shelf.rows.filter((r) => released(r)).length) },
      ]}
    />
  );
}

const releases: ReadonlySet<string> = new Set(['benchSpin', 'proofLoad', 'fullPower']);

function released(row: ShelfRow): boolean {
  return row.latest !== null && releases.has(row.latest.standing.key);
}

function Designs({ rows }: { readonly rows: readonly ShelfRow[] }) {
  return (
    <RuledTable
      caption="Designs of the club with their latest revision"
      columns={[
        { label: 'Design' },
        { label: 'Revision' },
        { label: 'Standing' },
        { label: 'Weakest link' },
        { label: 'Holds to', kind: 'number' },
        { label: 'Asked', kind: 'number' },
        { label: 'Factor', kind: 'number' },
      ]}
      rows={rows.map((row) => ({ key: row.number, cells: cellsOf(row) }))}
    />
  );
}

function cellsOf(row: ShelfRow) {
  const name = (
    <>
      <Link
        href={
          row.latest === null
            ? addresses.draft(row.number)
            : addresses.revision(row.number, row.latest.letter)
        }
      >
        {row.title}
      </Link>
      <span className="hush under">
        {row.number}, {row.author.name}
      </span>
    </>
  );
  if (row.latest === null) {
    const draft = <Link href={addresses.draft(row.number)}>draft</Link>;
    return [
      name,
      draft,
      'In preparation',
      <WordMark key="w" kind="not-assessed">
        not published
      </WordMark>,
      '–',
      '–',
      '–',
    ];
  }
  const { letter, publishedAt, standing, headline, openThreads } = row.latest;
  const critical = headline.findings.critical;
  const below = headline.factor !== null && headline.required !== null && headline.factor < headline.required;
  return [
    name,
    <span key="r">
      <strong>{letter}</strong>{' '}
      <span className="hush">
        <Moment at={publishedAt} day />
      </span>
      {row.draft.ahead ? (
        <>
          {' '}
          <Link href={addresses.draft(row.number)}>changed draft</Link>
        </>
      ) : null}
    </span>,
    <span key="s">
      {standing.label}
      <span className="hush under">{counts(critical, openThreads)}</span>
    </span>,
    headline.weakest ?? (
      <WordMark key="w" kind="not-assessed">
        not assessed
      </WordMark>
    ),
    <Quantity key="h" si={headline.holdsTo} unit="N m" />,
    <Quantity key="d" si={headline.demanded} unit="N m" />,
    <span key="f" className={below ? 'warn' : undefined}>
      {headline.factor === null ? '–' : printFactor(headline.factor)}
      {below ? ' ' : null}
      {below ? <WordMark kind="below">below</WordMark> : null}
    </span>,
  ];
}

function counts(critical: number, threads: number): string {
  const parts = [
    critical === 0 ? null : `${critical} critical ${critical === 1 ? 'finding' : 'findings'}`,
    threads === 0 ? null : `${threads} open ${threads === 1 ? 'thread' : 'threads'}`,
  ].filter((p) => p !== null);
  return parts.join(', ');
}

function Empty({ shelf }: { readonly shelf: ShelfView }) {
  return (
    <EmptyState>
      <p>No design stands on this shelf yet.</p>
      {shelf.mayCreate ? <Link href={addresses.newDesign(shelf.club.code)}>Start one</Link> : null}
    </EmptyState>
  );
}

function Margin({ shelf }: { readonly shelf: ShelfView }) {
  const waiting = shelf.rows.filter((row) => row.waiting.length > 0);
  return (
    <>
      <MarginBlock title="Waits for you">
        {waiting.length === 0 ? (
          <p className="hush">Nothing waits for you.</p>
        ) : (
          <ul className="plain-list">
            {waiting.map((row) => (
              <li key={row.number}>
                <Link
                  href={
                    row.latest === null
                      ? addresses.draft(row.number)
                      : addresses.revision(row.number, row.latest.letter)
                  }
                >
                  {row.title}
                </Link>
                <ul className="plain-list hush">
                  {row.waiting.map((sentence) => (
                    <li key={sentence}>{sentence}</li>
                  ))}
                </ul>
              </li>
            ))}
          </ul>
        )}
      </MarginBlock>
      {shelf.mayCreate ? (
        <LinkButton href={addresses.newDesign(shelf.club.code)} kind="main">
          New design
        </LinkButton>
      ) : null}
      <Caution>
        <p>
          Local rules and competent persons come first. What is computed here is a second pair of eyes, not a
          licence.
        </p>
      </Caution>
    </>
  );
}

// The ledger of a club: every change of state in order, each bound to the one before by its hash.
import type { Metadata } from 'next';
import Link from 'next/link';
import { addresses } from '@/app/_parts/addresses';
import { PageFrame } from '@/app/_parts/page-frame';
import { shown } from '@/app/_parts/shown';
import { ledgerPage } from '@/lib/service/ledger/ledger-page';
import { currentViewer } from '@/lib/service/sign-in/page-session';
import type { LedgerView } from '@/lib/service/views/ledger';
import { Moment } from '@/lib/ui/marks/time';
import { EmptyState } from '@/lib/ui/notices/empty-state';
import { PlainTitle } from '@/lib/ui/sheet/plain-title';
import { Sheet } from '@/lib/ui/sheet/sheet';
import { HashHead } from '@/lib/ui/sheet/title-block';
import { View } from '@/lib/ui/sheet/view';
import { RuledTable } from '@/lib/ui/table/ruled-table';

interface Props {
  readonly params: Promise<{ club: string }>;
  readonly searchParams: Promise<{ before?: string }>;
}

export const metadata: Metadata = { title: 'Ledger' };

export default async function LedgerPage({ params, searchParams }: Props) {
  const { club } = await params;
  const before = Number((await searchParams).before);
  const page = Number.isInteger(before) && before > 0 ? { club, before } : { club };
  const result = await ledgerPage(await currentViewer(), page);
  return shown(result, (ledger) => (
    <PageFrame club={club} current="ledger">
      <Sheet title={<LedgerTitle ledger={ledger} />}>
        <View letter="A" title="Entries, newest first">
          <p className="hush">
            Nothing here can be changed or taken out. Each entry carries a hash over its words and the hash of
            the entry before it, so that a changed entry breaks the chain from there on. Write the newest hash
            down outside this service now and then: a chain proves nothing against someone who can rewrite all
            of it.
          </p>
          {ledger.rows.length === 0 ? (
            <EmptyState>Nothing has happened in this club yet.</EmptyState>
          ) : (
            <Entries ledger={ledger} />
          )}
          {ledger.older === null ? null : (
            <Link href={`${addresses.ledger(club)}?before=${ledger.older}`}>Older entries</Link>
          )}
        </View>
      </Sheet>
    </PageFrame>
  ));
}

function LedgerTitle({ ledger }: { readonly ledger: LedgerView }) {
  const head = ledger.head === null ? 'none' : <HashHead hash={ledger.head.hash} />;
  return (
    <PlainTitle
      over={ledger.club.name}
      title="Ledger"
      cells={[
        { label: 'Entries', content: String(ledger.head?.seq ?? 0) },
        { label: 'Newest hash', content: head },
      ]}
    />
  );
}

function Entries({ ledger }: { readonly ledger: LedgerView }) {
  return (
    <RuledTable
      caption="Entries of the ledger"
      layout="entries"
      columns={[
        { label: 'No.', kind: 'number' },
        { label: 'When' },
        { label: 'Who' },
        { label: 'What' },
        { label: 'About' },
        { label: 'Hash' },
      ]}
      rows={ledger.rows.map((row) => ({
        key: String(row.seq),
        id: `entry-${row.seq}`,
        cells: [
          row.seq,
          <Moment key="at" at={row.at} />,
          row.actor?.name ?? 'the service',
          row.label,
          aboutWords(row.subject),
          <HashHead key="hash" hash={row.hash} />,
        ],
      }))}
    />
  );
}

/** Designs are named by number and revision; people and invitations by an identifier that tells a reader nothing. */
function aboutWords(subject: string): string {
  return /^[0-9a-f]{8}-[0-9a-f-]{27}$/.test(subject) ? `record ${subject.slice(-8)}` : subject;
}
